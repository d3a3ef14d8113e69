import { describe, expect, it } from "vitest";
import {
  colourPaperProcess,
  cusumChart,
  ewmaChart,
  nelsonRules,
  processVerdict,
  type RunRuleId,
  runRules,
  type Strip,
  seriesOfStrips,
  statisticalLimits,
  verdictHistory,
  westernElectricRules,
} from "wetside/control";
import { batch, grey, morning, paperStrip, reference } from "../control/example-strips.ts";
import fc from "./fast-check.ts";

const unit = { centre: 0, sigma: 1 };
const allRules = [...nelsonRules, ...westernElectricRules];

/** Readings in half sigmas: ties, readings on the centre line and on every zone line are common. */
const halves = fc
  .array(fc.integer({ min: -8, max: 8 }), { maxLength: 60, size: "max" })
  .map((steps) => steps.map((step) => step / 2));

/**
 * The rules straight from their definitions, looking back from each reading: slow, and independent of
 * the one-pass detector.
 */
function byDefinition(x: readonly number[], rule: RunRuleId): readonly number[] {
  const found: number[] = [];
  x.forEach((_, i) => {
    const last = (n: number) => (i + 1 >= n ? x.slice(i + 1 - n, i + 1) : []);
    const full = (n: number, test: (v: number) => boolean) =>
      last(n).length === n && last(n).every(test);
    const oneSide = (n: number) => full(n, (v) => v > 0) || full(n, (v) => v < 0);
    const steps = (n: number) => {
      const run = last(n);
      return run.slice(1).map((v, j) => Math.sign(v - (run[j] ?? 0)));
    };
    const zone = (needed: number, window: number, z: number) => {
      const recent = x.slice(Math.max(0, i + 1 - window), i + 1);
      return [1, -1].some(
        (sign) => recent.filter((v) => sign * v > z).length >= needed && sign * (x[i] ?? 0) > z,
      );
    };
    const definition: Record<RunRuleId, () => boolean> = {
      "nelson-1": () => Math.abs(x[i] ?? 0) > 3,
      "nelson-2": () => oneSide(9),
      "nelson-3": () => {
        const s = steps(6);
        return s.length === 5 && (s.every((v) => v === 1) || s.every((v) => v === -1));
      },
      "nelson-4": () => {
        const s = steps(14);
        return s.length === 13 && s.every((v, j) => v !== 0 && (j === 0 || v === -(s[j - 1] ?? 0)));
      },
      "nelson-5": () => zone(2, 3, 2),
      "nelson-6": () => zone(4, 5, 1),
      "nelson-7": () => full(15, (v) => Math.abs(v) < 1),
      "nelson-8": () =>
        full(8, (v) => Math.abs(v) > 1) && last(8).some((v) => v > 0) && last(8).some((v) => v < 0),
      "western-electric-1": () => Math.abs(x[i] ?? 0) > 3,
      "western-electric-2": () => zone(2, 3, 2),
      "western-electric-3": () => zone(4, 5, 1),
      "western-electric-4": () => oneSide(8),
    };
    if (definition[rule]()) found.push(i);
  });
  return found;
}

// Full lengths: the long patterns need them.
const upTo = (maxLength: number) => ({ maxLength, size: "max" as const });

/** Sequences in which the long patterns are common enough to be tested, and broken often enough. */
const patterned = fc.oneof(
  halves,
  fc.array(fc.constantFrom(-0.5, 0.5, 0.75, 1, 0.5, 0.75, 0), upTo(60)),
  fc.array(fc.constantFrom(-1.5, 1.5, 1.25, 2.5), upTo(40)),
  fc
    .tuple(fc.array(fc.integer({ min: 1, max: 9 }), upTo(40)), fc.integer({ min: 0, max: 60 }))
    .map(([sizes, at]) => sizes.map((s, i) => ((i % 2 ? s : -s) / 10) * (i === at ? -1 : 1))),
  fc.array(fc.constantFrom(0.25, 0.25, 0.5, 0.125, 0.25, -0.5, 0), upTo(30)).map((steps) => {
    let sum = -2;
    return steps.map((step) => {
      sum += step;
      return sum;
    });
  }),
);

describe("run rules", () => {
  it("find exactly what a detector written from the definitions finds", () => {
    const seen = new Map<RunRuleId, number>();
    fc.assert(
      fc.property(patterned, (x) => {
        for (const rule of allRules) {
          const at = runRules(x, unit, { rules: [rule] }).map((signal) => signal.at);
          expect(at).toEqual(byDefinition(x, rule));
          if (at.length > 0) seen.set(rule, (seen.get(rule) ?? 0) + 1);
        }
      }),
      { numRuns: 600, seed: 20260814 },
    );
    // A rule that never signalled would have been compared with nothing.
    for (const rule of allRules) expect(seen.get(rule) ?? 0, rule).toBeGreaterThan(4);
  });

  it("do not hear each other: all at once find what each finds alone", () => {
    fc.assert(
      fc.property(patterned, (x) => {
        const together = runRules(x, unit, { rules: allRules });
        const alone = allRules.flatMap((rule) => runRules(x, unit, { rules: [rule] }));
        const key = (s: { rule: string; at: number }) => `${s.at} ${s.rule}`;
        expect(together.map(key).sort()).toEqual(alone.map(key).sort());
      }),
    );
  });

  it("mirror: the negated series signals at the same readings on the other side", () => {
    const other = { above: "below", below: "above", both: "both" } as const;
    fc.assert(
      fc.property(patterned, (x) => {
        const up = runRules(x, unit, { rules: allRules });
        const down = runRules(
          x.map((v) => -v),
          unit,
          { rules: allRules },
        );
        expect(down.map(({ rule, at, rows, side }) => ({ rule, at, rows, side }))).toEqual(
          up.map(({ rule, at, rows, side }) => ({ rule, at, rows, side: other[side] })),
        );
      }),
    );
  });

  it("do not depend on the unit or the centre of the readings", () => {
    fc.assert(
      fc.property(patterned, fc.integer({ min: -50, max: 50 }), (x, centre) => {
        // Powers of two keep ties and lines exact.
        const scaled = x.map((v) => centre + v * 0.25);
        expect(runRules(scaled, { centre, sigma: 0.25 }, { rules: allRules })).toEqual(
          runRules(x, unit, { rules: allRules }),
        );
      }),
    );
  });

  it("cut in two by a restart, find what each part alone would", () => {
    fc.assert(
      fc.property(patterned, patterned, (a, b) => {
        fc.pre(b.length > 0);
        const cut = runRules([...a, ...b], unit, { rules: allRules, restartAt: [a.length] });
        const apart = [
          ...runRules(a, unit, { rules: allRules }).map((s) => [s.rule, s.at, s.rows]),
          ...runRules(b, unit, { rules: allRules }).map((s) => [
            s.rule,
            s.at + a.length,
            s.rows.map((row) => row + a.length),
          ]),
        ];
        expect(cut.map((s) => [s.rule, s.at, s.rows])).toEqual(apart);
      }),
    );
  });

  it("give rows in order, within the series, ending at the reading that completes the pattern", () => {
    fc.assert(
      fc.property(patterned, (x) => {
        for (const { at, rows } of runRules(x, unit, { rules: allRules })) {
          expect(rows.at(-1)).toBe(at);
          expect([...rows].sort((a, b) => a - b)).toEqual(rows);
          expect(rows[0]).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});

const readings = fc.array(
  fc.integer({ min: -3000, max: 3000 }).map((t) => t / 1000),
  { minLength: 20, maxLength: 60, size: "max" },
);
// Sums and averages of some dozens of doubles of size 3·scale.
const rounding = 1e-9;

describe("charts", () => {
  it("scale and shift with the readings", () => {
    fc.assert(
      fc.property(
        readings,
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: -10, max: 10, noNaN: true }),
        (x, scale, shift) => {
          fc.pre(new Set(x).size > 5);
          const y = x.map((v) => shift + scale * v);
          const [a, b] = [statisticalLimits(x), statisticalLimits(y)];
          const close = (p: number, q: number) =>
            expect(Math.abs(p - q)).toBeLessThan(rounding * (1 + scale + Math.abs(shift)));
          close(b.centre, shift + scale * a.centre);
          close(b.sigma, scale * a.sigma);
          close(b.upperLimit, shift + scale * a.upperLimit);
          const e = ewmaChart(x, a).values;
          ewmaChart(y, b).values.forEach((v, i) => {
            close(v, shift + scale * (e[i] ?? 0));
          });
          const c = cusumChart(x, { target: a.centre, sigma: a.sigma });
          const d = cusumChart(y, { target: b.centre, sigma: b.sigma });
          d.upperSums.forEach((v, i) => {
            expect(Math.abs(v - scale * (c.upperSums[i] ?? 0))).toBeLessThan(
              60 * rounding * (1 + scale + Math.abs(shift)),
            );
          });
        },
      ),
    );
  });

  it("mirror: upper and lower sums change places on the negated series", () => {
    fc.assert(
      fc.property(readings, (x) => {
        const up = cusumChart(x, { target: 0, sigma: 1 });
        const down = cusumChart(
          x.map((v) => -v),
          { target: 0, sigma: 1 },
        );
        expect(down.upperSums).toEqual(up.lowerSums);
        expect(down.beyond).toEqual(up.beyond);
      }),
    );
  });

  it("keep the weighted average between the smallest and largest of start and readings", () => {
    fc.assert(
      fc.property(readings, fc.double({ min: 0.01, max: 1, noNaN: true }), (x, lambda) => {
        const { values } = ewmaChart(x, { ...unit, lambda });
        const slack = 1e-12;
        expect(Math.max(...values)).toBeLessThanOrEqual(Math.max(0, ...x) + slack);
        expect(Math.min(...values)).toBeGreaterThanOrEqual(Math.min(0, ...x) - slack);
      }),
    );
  });

  it("never let a sum fall below zero, nor both sides grow on one reading", () => {
    fc.assert(
      fc.property(readings, (x) => {
        const { upperSums, lowerSums } = cusumChart(x, { target: 0, sigma: 1 });
        upperSums.forEach((up, i) => {
          const down = lowerSums[i] ?? 0;
          expect(Math.min(up, down)).toBeGreaterThanOrEqual(0);
          const grew = up > (upperSums[i - 1] ?? 0) && down > (lowerSums[i - 1] ?? 0);
          expect(grew).toBe(false);
        });
      }),
    );
  });
});

/** Densities to a thousandth, as a densitometer prints them. */
const thousandths = fc.integer({ min: -150, max: 150 }).map((t) => t / 1000);
const logOf = (lds: readonly number[], minutesApart = 20): readonly Strip[] =>
  lds.map((ld, i) => {
    const minutes = i * minutesApart;
    const time = `${String(6 + Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
    return paperStrip(morning(1, time), ld);
  });
const specification = colourPaperProcess;
const badness = ({ verdict, workMayRun }: { verdict: string; workMayRun: boolean }) =>
  verdict === "hold" ? 3 : verdict === "run" ? 0 : workMayRun ? 1 : 2;

describe("deviations", () => {
  it("do not change when readings and aims move by the same", () => {
    fc.assert(
      fc.property(
        fc.array(thousandths, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 0, max: 500 }).map((t) => t / 1000),
        (lds, shift) => {
          const move = (patches: Strip["patches"]) =>
            Object.fromEntries(
              Object.entries(patches).map(([patch, d]) => [
                patch,
                { red: d.red + shift, green: d.green + shift, blue: d.blue + shift },
              ]),
            );
          const strips = logOf(lds);
          const moved = strips.map((strip) => ({ ...strip, patches: move(strip.patches) }));
          const batches = [batch("77")];
          const movedBatches = [batch("77", { reference: move(reference) })];
          expect(seriesOfStrips({ strips: moved, batches: movedBatches, specification })).toEqual(
            seriesOfStrips({ strips, batches, specification }),
          );
        },
      ),
    );
  });

  it("do not depend on the order in which the strips are given", () => {
    const lds = fc.array(thousandths, { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(lds, fc.integer(), (values, seed) => {
        const strips = logOf(values);
        const shuffled = strips
          .map((strip, i) => ({ strip, key: Math.sin(seed + i * 7.13) }))
          .sort((p, q) => p.key - q.key)
          .map(({ strip }) => strip);
        const batches = [batch("77")];
        const plain = ({ deviations, takenAt }: { deviations: unknown; takenAt: unknown }) => [
          deviations,
          takenAt,
        ];
        expect(seriesOfStrips({ strips: shuffled, batches, specification }).map(plain)).toEqual(
          seriesOfStrips({ strips, batches, specification }).map(plain),
        );
      }),
    );
  });
});

describe("the verdict by process limits", () => {
  const batches = [batch("77")];

  it("never improves when any reading is moved farther from its aim", () => {
    fc.assert(
      fc.property(
        fc.array(thousandths, { minLength: 1, maxLength: 6 }),
        fc.nat(),
        fc.integer({ min: 1, max: 100 }).map((t) => t / 1000),
        (lds, pick, farther) => {
          const at = pick % lds.length;
          const moved = lds.map((ld, i) => (i === at ? ld + (ld < 0 ? -farther : farther) : ld));
          const before = processVerdict({ strips: logOf(lds), batches, specification });
          const after = processVerdict({ strips: logOf(moved), batches, specification });
          expect(badness(after)).toBeGreaterThanOrEqual(badness(before));
        },
      ),
      { numRuns: 400 },
    );
  });

  it("is the worst of its parameters' and stands at the end of its history", () => {
    fc.assert(
      fc.property(fc.array(thousandths, { minLength: 1, maxLength: 8 }), (lds) => {
        const history = { strips: logOf(lds), batches, specification };
        const verdict = processVerdict(history);
        expect(badness(verdict)).toBe(Math.max(...verdict.parameters.map(badness)));
        const last = verdictHistory(history).at(-1);
        expect([last?.verdict, last?.workMayRun]).toEqual([verdict.verdict, verdict.workMayRun]);
      }),
    );
  });

  it("never holds on one strip alone, and never runs on a stale one", () => {
    fc.assert(
      fc.property(thousandths, (ld) => {
        const [strip] = logOf([ld]);
        const strips = strip === undefined ? [] : [strip];
        expect(processVerdict({ strips, batches, specification }).verdict).not.toBe("hold");
        const late = processVerdict({ strips, batches, specification, asOf: morning(3) });
        expect(late.workMayRun).toBe(false);
      }),
    );
  });

  it("is the same whether a strip of another process stands in the log or not", () => {
    fc.assert(
      fc.property(fc.array(thousandths, { minLength: 1, maxLength: 6 }), (lds) => {
        const strips = logOf(lds);
        const stranger = { ...paperStrip(morning(1), 0), process: "x", patches: { a: grey(1) } };
        const with1 = processVerdict({ strips: [...strips, stranger], batches, specification });
        expect(with1).toEqual(processVerdict({ strips, batches, specification }));
      }),
    );
  });
});
