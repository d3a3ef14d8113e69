import { readdirSync, writeFileSync } from "node:fs";
import { type CheckValue, type Computed, deviation, readSource } from "./run.ts";

// Prints every published value beside what wetside computes, and writes docs/checks.md.

const here = new URL("./", import.meta.url);
const data = new URL("../../data/published/", import.meta.url);

function shown(value: CheckValue): string {
  if (typeof value === "string") return value;
  if (typeof value === "number") return String(Number(value.toPrecision(10)));
  const few = value.slice(0, 6).map((each) => String(Number(each.toPrecision(6))));
  return value.length > 6 ? `${few.join(", ")}, … (${value.length})` : few.join(", ");
}

function cell(text: string): string {
  return text.replaceAll("|", "\\|").replaceAll("\n", " ");
}

const page: string[] = [
  "# Published checks",
  "",
  "Written by `npm run checks`: every published or independently computed value beside what wetside computes.",
  "The numbers live in `data/published`, each with its source and how it was obtained; the same computations run in `npm test`.",
  "",
];
let count = 0;
let explained = 0;

for (const name of readdirSync(data).sort()) {
  if (!name.endsWith(".json")) continue;
  const slug = name.slice(0, -".json".length);
  const source = readSource(slug);
  const { computed } = (await import(new URL(`${slug}.ts`, here).href)) as { computed: Computed };
  page.push(`## ${source.source}`, "", `How obtained: ${source.howObtained}.`, "");
  if (source.note) page.push(source.note, "");
  page.push("| quantity | published | computed | deviation | allowed |", "|---|---|---|---|---|");
  console.log(`\n${source.source}`);
  for (const check of source.checks) {
    const value = computed[check.id]?.(check.inputs) ?? "no computation";
    const off = deviation(check.published, value);
    const { abs, rel, reason } = check.tolerance ?? {};
    const limit = abs === undefined ? (rel === undefined ? "" : `${rel} of the value`) : `${abs}`;
    const allowed = reason ? `${limit} (${reason})` : "the same word";
    const distance =
      typeof check.published === "string" ? (off === 0 ? "none" : "differs") : off.toPrecision(2);
    console.log(
      `  ${check.quantity}: published ${shown(check.published)}, computed ${shown(value)}, deviation ${distance}`,
    );
    page.push(
      `| ${cell(check.quantity)} | ${cell(shown(check.published))} | ${cell(shown(value))} | ${distance} | ${cell(allowed)} |`,
    );
    count++;
    if (check.disagrees !== undefined) {
      explained++;
      console.log(`    disagrees: ${check.disagrees}`);
      page.push(`| ↳ *disagrees* | ${cell(check.disagrees)} | | | |`);
    }
  }
  page.push("");
}
page.splice(4, 0, `${count} values; ${explained} where the publication disagrees, each explained.`);
writeFileSync(new URL("../../docs/checks.md", import.meta.url), `${page.join("\n").trimEnd()}\n`);
console.log(
  `\n${count} published values, ${explained} explained disagreements; written to docs/checks.md`,
);
