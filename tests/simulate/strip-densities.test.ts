import { describe, expect, it } from "vitest";
import type { Patches } from "wetside/control";
import { seededRandom } from "wetside/numerics";
import { simulatedLines, simulateLab } from "wetside/simulate";
import { readPatches, usualStripNoise } from "../../lib/simulate/strip-densities.ts";
import { inARow } from "./labs.ts";

// Draws are seeded. A mean or covariance of N draws may stray by five of its standard errors, which
// one of two million does by chance.
const STANDARD_ERRORS = 5;
const DRAWS = 20_000;
/** Rounding to thousandths adds the variance of a uniform error. */
const ROUNDING_VARIANCE = 0.001 ** 2 / 12;

const truth: Patches = {
  dMin: { red: 0.26, green: 0.6, blue: 0.84 },
  ld: { red: 0.46, green: 0.88, blue: 1.14 },
  hd: { red: 1.3, green: 1.83, blue: 2.12 },
  dMax: { red: 1.94, green: 2.49, blue: 2.87 },
};
// How much of the noise of a strip and a layer a patch shows.
const shares = [0.4, 1, 1.3, 1.2].flatMap((share) => [share, share, share]);
const names = Object.keys(truth).flatMap((p) => ["red", "green", "blue"].map((c) => `${p} ${c}`));

function rows(noise: typeof usualStripNoise, wander: number, draws = DRAWS): readonly number[][] {
  const random = seededRandom(5);
  return Array.from({ length: draws }, () =>
    Object.values(readPatches(truth, noise, wander, random)).flatMap(inARow),
  );
}

function means(all: readonly (readonly number[])[]): readonly number[] {
  const sums = names.map((_, i) => all.reduce((sum, row) => sum + (row[i] ?? 0), 0));
  return sums.map((sum) => sum / all.length);
}

function expectedCovariance(i: number, j: number, noise = usualStripNoise): number {
  const both = (shares[i] ?? 0) * (shares[j] ?? 0);
  const sameColour = i % 3 === j % 3;
  const reading = i < 3 ? noise.readingSd / 2 : noise.readingSd;
  return (
    both * (noise.stripSd ** 2 + (sameColour ? noise.layerSd ** 2 : 0)) +
    (i === j ? reading ** 2 + ROUNDING_VARIANCE : 0)
  );
}

describe("the reading of a strip", () => {
  it("is the truth to a thousandth without noise", () => {
    const none = { stripSd: 0, layerSd: 0, readingSd: 0, wanderSd: 0 };
    const odd = { ld: { red: 0.12345, green: 0, blue: 4.4996 } };
    expect(readPatches(odd, none, 0, seededRandom(1))).toEqual({
      ld: { red: 0.123, green: 0, blue: 4.5 },
    });
  });

  it("never leaves the densitometer's scale, 0 to 4.5", () => {
    const wild = { stripSd: 0.2, layerSd: 0.2, readingSd: 0.2, wanderSd: 0 };
    const edge = { dMin: { red: 0, green: 0, blue: 0 }, dMax: { red: 4.5, green: 4.5, blue: 9 } };
    const random = seededRandom(2);
    for (let i = 0; i < 500; i++) {
      for (const v of Object.values(readPatches(edge, wild, 0, random)).flatMap(inARow)) {
        expect(v).toBeGreaterThanOrEqual(0);
        expect(v).toBeLessThanOrEqual(4.5);
      }
    }
  });

  it("has the truth as its mean, within five standard errors", () => {
    const expected = Object.values(truth).flatMap(inARow);
    means(rows(usualStripNoise, 0)).forEach((mean, i) => {
      const se = Math.sqrt(expectedCovariance(i, i) / DRAWS);
      expect(Math.abs(mean - (expected[i] ?? 0)), names[i]).toBeLessThan(STANDARD_ERRORS * se);
    });
  });

  it("has the covariance asked for between all patches and colours, within five standard errors", () => {
    const all = rows(usualStripNoise, 0);
    const mean = means(all);
    names.forEach((_, i) => {
      names.slice(0, i + 1).forEach((__, j) => {
        const product = (row: readonly number[]) =>
          ((row[i] ?? 0) - (mean[i] ?? 0)) * ((row[j] ?? 0) - (mean[j] ?? 0));
        const found = all.reduce((sum, row) => sum + product(row), 0) / (DRAWS - 1);
        const expected = expectedCovariance(i, j);
        // Variance of a sample covariance of normals: (σii·σjj + σij²)/N.
        const se = Math.sqrt(
          (expectedCovariance(i, i) * expectedCovariance(j, j) + expected ** 2) / DRAWS,
        );
        expect(Math.abs(found - expected), `${names[i]}, ${names[j]}`).toBeLessThan(
          STANDARD_ERRORS * se,
        );
      });
    });
  });

  it("takes each part of the noise from its own number", () => {
    const none = { stripSd: 0, layerSd: 0, readingSd: 0, wanderSd: 0 };
    for (const part of ["stripSd", "layerSd", "readingSd"] as const) {
      const noise = { ...none, [part]: 0.02 };
      const all = rows(noise, 0, 4000);
      const [mean, at] = [means(all), names.indexOf("ld green")];
      const variance =
        all.reduce((sum, row) => sum + ((row[at] ?? 0) - (mean[at] ?? 0)) ** 2, 0) / 3999;
      const expected = 0.02 ** 2 + ROUNDING_VARIANCE;
      const se = expected * Math.sqrt(2 / 4000);
      expect(Math.abs(variance - expected), part).toBeLessThan(STANDARD_ERRORS * se);
    }
  });
});

describe("ten years of start-up strips of a line in order", () => {
  const [film] = simulatedLines;
  if (film === undefined) throw new Error("the lab has a film line");
  const days = 3660;
  const lab = simulateLab({ seed: 8, days, lines: [film], mixSd: 0 });
  const dates = new Set<string>();
  const startUp = lab.strips.filter(({ takenAt }) => {
    const date = takenAt.slice(0, 10);
    return dates.has(date) ? false : dates.add(date);
  });
  // The controller holds the developer to 0.05 °C, which LD answers to with (ln 2/10)·1.15 + 0.010
  // red, 0.020 green, 0.037 (and 1.05) blue per degree.
  const perDegree = [1.15, 1.15, 1.05].map(
    (rate, i) => (Math.LN2 / 10) * rate + ([0.01, 0.02, 0.037][i] ?? 0),
  );
  const heater = (i: number, j: number) => 0.05 ** 2 * (perDegree[i] ?? 0) * (perDegree[j] ?? 0);
  // The bath's wander keeps half of itself overnight: its variance is wanderSd²/(1 − 0.5²).
  const wander = usualStripNoise.wanderSd ** 2 / 0.75;
  const covariance = (i: number, j: number) => {
    const of = expectedCovariance(3 + i, 3 + j);
    return of + heater(i, j) + wander;
  };
  const ld = startUp.map(({ patches }) =>
    inARow(patches.ld ?? { red: Number.NaN, green: Number.NaN, blue: Number.NaN }),
  );
  const mean = [0, 1, 2].map((i) => ld.reduce((sum, row) => sum + (row[i] ?? 0), 0) / days);

  it("are one a day", () => {
    expect(startUp).toHaveLength(days);
  });

  it("average to the reference strip at LD, within five standard errors", () => {
    [0.46, 0.88, 1.14].forEach((reference, i) => {
      // Memory of the wander: its part of the variance counts (1 + 0.5)/(1 − 0.5) times.
      const se = Math.sqrt((covariance(i, i) + 2 * wander) / days);
      expect(Math.abs((mean[i] ?? 0) - reference)).toBeLessThan(STANDARD_ERRORS * se);
    });
  });

  it("vary at LD as strip, layer, reading, heater and wander add up to", () => {
    for (const i of [0, 1, 2]) {
      for (const j of [0, 1, 2].slice(0, i + 1)) {
        const product = (row: readonly number[]) =>
          ((row[i] ?? 0) - (mean[i] ?? 0)) * ((row[j] ?? 0) - (mean[j] ?? 0));
        const found = ld.reduce((sum, row) => sum + product(row), 0) / (days - 1);
        const expected = covariance(i, j);
        const se = Math.sqrt((covariance(i, i) * covariance(j, j) + expected ** 2) / days);
        expect(Math.abs(found - expected), `${i} ${j}`).toBeLessThan(STANDARD_ERRORS * se);
      }
    }
  });

  it("remember the day before as little as the wander asks", () => {
    const at = (day: number) => (ld[day]?.[1] ?? 0) - (mean[1] ?? 0);
    let sum = 0;
    for (let day = 1; day < days; day++) sum += at(day) * at(day - 1);
    const found = sum / days / covariance(1, 1);
    const expected = (0.5 * wander) / covariance(1, 1);
    expect(Math.abs(found - expected)).toBeLessThan(STANDARD_ERRORS / Math.sqrt(days));
    expect(found).toBeGreaterThan(0);
  });
});
