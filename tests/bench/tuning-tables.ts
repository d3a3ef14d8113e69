import type { CoverageCell, CoverageResult } from "./tuning-labs.ts";

/** The results as tables in Markdown, with the range over all cells. */
export function coverageTables(results: readonly CoverageResult[]): string {
  const changed = results.filter(({ cell }) => cell.error !== 0);
  const quiet = results.filter(({ cell }) => cell.error === 0);
  const sizes = [...new Set(changed.map(({ cell }) => cell.error))];
  const moments = [...new Set(changed.map(({ cell }) => cell.changeAt))];
  const designs = [...new Set(changed.map(({ cell }) => design(cell)))];
  const table = (title: string, of: (result: CoverageResult) => string) => [
    `**${title}**`,
    "",
    `| noise, strips a turnover | change at | ${sizes.map(signed).join(" | ")} |`,
    `| --- | --- | ${sizes.map(() => "---").join(" | ")} |`,
    ...designs.flatMap((name) =>
      moments.map((at) => {
        const row = sizes.map((error) => {
          const found = changed.find(
            ({ cell }) => design(cell) === name && cell.changeAt === at && cell.error === error,
          );
          return found === undefined ? "" : of(found);
        });
        return `| ${name} | ${at.toFixed(2)} | ${row.join(" | ")} |`;
      }),
    ),
    "",
  ];
  const range = (of: (result: CoverageResult) => number, list: readonly CoverageResult[]) => {
    const shares = list.map((result) => of(result) / result.labs);
    return `${percent(Math.min(...shares))} to ${percent(Math.max(...shares))} %`;
  };
  const labs = changed[0]?.labs ?? 0;
  return [
    `${labs} labs a cell (${quiet[0]?.labs ?? 0} where nothing changes), ${results.length} cells; strips over ${results[0]?.cell.turnovers ?? 0} turnovers. The 95 % interval of the error holds the truth in ${range((r) => r.errorHeld, changed)} of labs, that of the moment in ${range((r) => r.momentHeld, changed)}; a share of 95 % found in ${labs} labs has a standard error of ${percent(Math.sqrt((0.95 * 0.05) / labs))} %.`,
    "",
    ...table("How often the 95 % interval of the error holds the truth, %", (r) =>
      percent(r.errorHeld / r.labs),
    ),
    ...table("How often the 95 % interval of the moment holds the truth, %", (r) =>
      percent(r.momentHeld / r.labs),
    ),
    ...table("Mean width of the interval of the error, % of the rate", (r) =>
      (100 * r.width).toFixed(0),
    ),
    ...table("How often the change is noticed (test at 5 %), %", (r) =>
      percent(r.calledChanged / r.labs),
    ),
    "**Where nothing changes: how often a change is called all the same, %**",
    "",
    "| noise, strips a turnover | false alarms |",
    "| --- | --- |",
    ...quiet.map((r) => `| ${design(r.cell)} | ${percent(r.calledChanged / r.labs)} |`),
  ].join("\n");
}

function percent(share: number): string {
  return (100 * share).toFixed(1);
}

function design({ noiseSd, stripsPerTurnover }: CoverageCell): string {
  return `${noiseSd.toFixed(3)}, ${stripsPerTurnover}`;
}

function signed(error: number): string {
  return `${error > 0 ? "+" : "−"}${(100 * Math.abs(error)).toFixed(0)} %`;
}
