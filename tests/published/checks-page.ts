import { readdirSync } from "node:fs";
import {
  type CheckValue,
  type Computed,
  deviation,
  type PublishedCheck,
  type PublishedSource,
  readSource,
} from "./run.ts";

const here = new URL("./", import.meta.url);
const data = new URL("../../data/published/", import.meta.url);
/** Below this share of a value a deviation is the rounding of doubles, and its digits say nothing. */
const ROUNDING = 1e-12;

/** A published value with what wetside computes, ready to print. */
export interface PrintedCheck {
  readonly quantity: string;
  readonly published: string;
  readonly computed: string;
  readonly deviation: string;
  readonly allowed: string;
  readonly disagrees: string | undefined;
}

export interface PrintedSource {
  readonly source: PublishedSource;
  readonly checks: readonly PrintedCheck[];
}

async function computationsOf(slug: string): Promise<Computed> {
  return ((await import(new URL(`${slug}.ts`, here).href)) as { computed: Computed }).computed;
}

/** Every source of `data/published`, in the order of the file names, with all its values. */
export async function printedSources(
  computations: (slug: string) => Promise<Computed> = computationsOf,
): Promise<readonly PrintedSource[]> {
  const slugs = readdirSync(data)
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => name.slice(0, -".json".length));
  return Promise.all(
    slugs.map(async (slug) => {
      const source = readSource(slug);
      const computed = await computations(slug);
      const checks = source.checks.map((check) =>
        printed(check, computed[check.id]?.(check.inputs) ?? "no computation"),
      );
      return { source, checks };
    }),
  );
}

function printed(check: PublishedCheck, value: CheckValue): PrintedCheck {
  const { abs, rel, reason } = check.tolerance ?? {};
  const limit = abs === undefined ? (rel === undefined ? "" : `${rel} of the value`) : `${abs}`;
  return {
    quantity: check.quantity,
    published: shown(check.published),
    computed: shown(value),
    deviation: distance(check.published, value),
    allowed: reason ? `${limit} (${reason})` : "the same word",
    disagrees: check.disagrees,
  };
}

function shown(value: CheckValue): string {
  if (typeof value === "string") return value;
  if (typeof value === "number") return String(Number(value.toPrecision(10)));
  const few = value.slice(0, 6).map((each) => String(Number(each.toPrecision(6))));
  return value.length > 6 ? `${few.join(", ")}, … (${value.length})` : few.join(", ");
}

function distance(published: CheckValue, computed: CheckValue): string {
  const off = deviation(published, computed);
  if (typeof published === "string") return off === 0 ? "none" : "differs";
  if (off === 0) return "0";
  const size = Math.max(...[published].flat().map(Math.abs));
  return off <= ROUNDING * size ? "rounding" : off.toPrecision(2);
}

/** The page `docs/checks.md`. */
export function checksPage(sources: readonly PrintedSource[]): string {
  const all = sources.flatMap(({ checks }) => checks);
  const explained = all.filter(({ disagrees }) => disagrees !== undefined).length;
  const parts = sources.flatMap(({ source, checks }) => [
    `## ${source.source}`,
    "",
    `How obtained: ${source.howObtained}.`,
    "",
    ...(source.note ? [source.note, ""] : []),
    "| quantity | published | computed | deviation | allowed |",
    "|---|---|---|---|---|",
    ...checks.flatMap(rows),
    "",
  ]);
  const page = [
    "# Published checks",
    "",
    "Written by `npm run checks`: every published or independently computed value beside what wetside computes.",
    "The numbers live in `data/published`, each with its source and how it was obtained; the same computations run in `npm test`.",
    `${all.length} values; ${explained} where the publication disagrees, each explained.`,
    "A deviation below 1e-12 of the value is called rounding: those are the last digits of double precision.",
    "",
    ...parts,
  ];
  return `${page.join("\n").trimEnd()}\n`;
}

function rows({ disagrees, ...check }: PrintedCheck): readonly string[] {
  const { quantity, published, computed, deviation, allowed } = check;
  const cells = [quantity, published, computed, deviation, allowed].map(cell);
  const row = `| ${cells.join(" | ")} |`;
  return disagrees === undefined ? [row] : [row, `| ↳ *disagrees* | ${cell(disagrees)} | | | |`];
}

function cell(text: string): string {
  return text.replaceAll("|", "\\|").replaceAll("\n", " ");
}
