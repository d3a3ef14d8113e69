import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

/** What a check may be: one number, several compared one by one, or a word. */
export type CheckValue = number | readonly number[] | string;

/** One published value, as kept in data/published. */
export interface PublishedCheck {
  readonly id: string;
  /** What it is, in words, with the unit. */
  readonly quantity: string;
  readonly published: CheckValue;
  /** How far the computed value may lie from the published one, and why. */
  readonly tolerance?: { readonly abs?: number; readonly rel?: number; readonly reason: string };
  readonly inputs?: unknown;
  /** Why the publication and the computation differ, where that is known. */
  readonly disagrees?: string;
  /** The value held to be right where the publication disagrees. */
  readonly expectedComputed?: CheckValue;
  /** For this check alone, where it differs from the file's. */
  readonly howObtained?: string;
}

export interface PublishedSource {
  readonly source: string;
  readonly howObtained: string;
  readonly note?: string;
  readonly checks: readonly PublishedCheck[];
}

// biome-ignore lint/suspicious/noExplicitAny: each computation knows the shape of its own inputs
export type Computed = Readonly<Record<string, (inputs: any) => CheckValue>>;

const folder = new URL("../../data/published/", import.meta.url);

export function readSource(slug: string): PublishedSource {
  return JSON.parse(readFileSync(new URL(`${slug}.json`, folder), "utf8"));
}

/** Largest distance between what was published and what was computed; words differ by 0 or ∞. */
export function deviation(published: CheckValue, computed: CheckValue): number {
  if (typeof published === "string" || typeof computed === "string") {
    return published === computed ? 0 : Number.POSITIVE_INFINITY;
  }
  const a = typeof published === "number" ? [published] : published;
  const b = typeof computed === "number" ? [computed] : computed;
  if (a.length !== b.length) return Number.POSITIVE_INFINITY;
  const distances = a.map((value, i) => Math.abs(value - (b[i] ?? Number.NaN)));
  return distances.some(Number.isNaN) ? Number.POSITIVE_INFINITY : Math.max(0, ...distances);
}

/** Whether each number lies within the tolerance of its published one. */
export function agrees(check: PublishedCheck, target: CheckValue, computed: CheckValue): boolean {
  if (typeof target === "string" || typeof computed === "string") return target === computed;
  const a = typeof target === "number" ? [target] : target;
  const b = typeof computed === "number" ? [computed] : computed;
  const { abs = 0, rel = 0 } = check.tolerance ?? {};
  // A value printed to half a unit may sit on the edge; doubles need a hair more.
  const allowed = (value: number) => Math.max(abs, rel * Math.abs(value)) * (1 + 1e-9);
  return (
    a.length === b.length && a.every((v, i) => Math.abs(v - (b[i] ?? Number.NaN)) <= allowed(v))
  );
}

/** Registers one test per published value of a source. */
export function runPublishedChecks(slug: string, computed: Computed): void {
  const file = `${slug}.json`;
  if (!existsSync(new URL(file, folder))) throw new Error(`data/published/${file} is missing`);
  const source = readSource(slug);
  describe(source.source, () => {
    for (const check of source.checks) {
      it(`gives ${check.quantity}`, () => {
        const compute = computed[check.id];
        if (!compute) throw new Error(`no computation for check "${check.id}" of ${file}`);
        const value = compute(check.inputs);
        if (check.disagrees === undefined) {
          expect(agrees(check, check.published, value), failure(check, value)).toBe(true);
          return;
        }
        const held = check.expectedComputed;
        if (held === undefined) throw new Error(`"${check.id}" disagrees but holds no value right`);
        expect(agrees(check, held, value), failure(check, value)).toBe(true);
        expect(agrees(check, check.published, value), "it agrees after all").toBe(false);
      });
    }
    it("has a computation for every check and a check for every computation", () => {
      const ids = source.checks.map((check) => check.id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(Object.keys(computed).sort()).toEqual([...ids].sort());
    });
    it("names how it was obtained and gives a reason for every tolerance", () => {
      expect(source.howObtained.length).toBeGreaterThan(0);
      for (const check of source.checks) {
        if (typeof check.published !== "string") {
          expect(check.tolerance?.reason, check.id).toBeTruthy();
        }
      }
    });
  });
}

function failure(check: PublishedCheck, value: CheckValue): string {
  const target = check.disagrees === undefined ? check.published : check.expectedComputed;
  return `${check.id}: published ${JSON.stringify(target)}, computed ${JSON.stringify(value)}`;
}
