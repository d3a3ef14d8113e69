import type { ParameterSeries } from "../../lib/control/index.ts";

type Limits = ParameterSeries["limits"];

function pair(size: number | null, oneSided = false): Limits["action"] {
  if (size === null) return null;
  const lower = oneSided ? null : -size;
  return { lower, upper: size, source: "this test", howObtained: "illustrative" };
}

export function limitsOf(action: number | null, control: number | null, oneSided = false): Limits {
  const kind = "process limits" as const;
  return { kind, action: pair(action), control: pair(control, oneSided), adjustment: null };
}

/** Noon of a day counted from 1 March 2026, then 1 hour for each further strip of the day. */
export function timeOf(day: number, strip = 0): string {
  const date = new Date(Date.UTC(2026, 2, 1 + day, 12 + strip));
  return date.toISOString().slice(0, 16);
}

/** One series with the given deviations, a strip a day. */
export function seriesOf(
  deviations: readonly number[],
  overrides: Partial<ParameterSeries> = {},
): ParameterSeries {
  return {
    process: "colour-negative",
    parameter: "ld",
    name: "LD (speed)",
    colour: "red",
    limits: limitsOf(0.06, 0.08),
    rows: deviations.map((_, i) => i),
    takenAt: deviations.map((_, i) => timeOf(i)),
    deviations,
    batchChanges: [],
    gaps: [],
    ...overrides,
  };
}

/** Three colours of LD, one of retained silver and the colour spread, over so many days. */
export function wholeLine(days: number): readonly ParameterSeries[] {
  const wave = (phase: number) => (_: unknown, i: number) =>
    (Math.round(3 * Math.sin(i * 1.7 + phase)) + 0) / 100;
  const days0 = Array.from({ length: days });
  const batchChanges =
    days > 4 ? [{ at: Math.floor(days / 2), from: "41", to: "42", crossover: true }] : [];
  const ld = (["red", "green", "blue"] as const).map((colour, i) =>
    seriesOf(days0.map(wave(i)), { colour, batchChanges }),
  );
  const silver = seriesOf(days0.map(wave(4)), {
    parameter: "retainedSilver",
    name: "Retained silver",
    colour: "blue",
    batchChanges,
  });
  const spread = seriesOf(
    days0.map((_, i) => {
      const three = ld.map(({ deviations }) => deviations[i] ?? 0);
      return Math.max(...three) - Math.min(...three);
    }),
    {
      parameter: "colourSpread",
      name: "Colour spread",
      colour: null,
      limits: limitsOf(null, 0.09, true),
      batchChanges,
    },
  );
  return [...ld, silver, spread];
}
