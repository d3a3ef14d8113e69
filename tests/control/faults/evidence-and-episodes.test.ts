import { describe, expect, it } from "vitest";
import {
  colourNegativeFaults,
  colourNegativeProcess,
  colourPaperProcess,
  faultEvidence,
  rankFaults,
  type Strip,
  signatureFromEpisodes,
  stripCovariance,
  withSignature,
} from "wetside/control";
import { seededRandom } from "wetside/numerics";
import { batches, frozen, paperStrip } from "../example-strips.ts";
import { components, strip, window } from "./window.ts";

const { normal } = seededRandom(11);
const read = (d: number) => {
  const one = () => d + 0.008 * normal();
  return { red: one(), green: one(), blue: one() };
};
const day = (i: number) =>
  `2026-${i < 31 ? "07" : "08"}-${String((i % 31) + 1).padStart(2, "0")}T07:10`;
const strips: readonly Strip[] = Array.from({ length: 40 }, (_, i) => {
  const off = i >= 34 ? -0.12 : 0;
  const patches = {
    dMin: read(0.1),
    ld: read(0.8 + off),
    hd: read(1.6 + 1.6 * off),
    dMax: read(2.4 + off / 2),
  };
  return paperStrip(day(i), 0, { patches });
});
const input = {
  strips,
  batches,
  specification: colourPaperProcess,
  basePeriod: { from: "2026-07-01", to: "2026-07-30" },
  lastStrips: 8,
};

describe("faultEvidence", () => {
  it("goes from strips to a ranking", () => {
    const evidence = faultEvidence(frozen(input));
    expect(evidence.components).toHaveLength(12);
    expect(evidence.deviations).toHaveLength(8);
    const ranking = rankFaults(evidence);
    expect(ranking.leading).toBe("under-active");
    expect(ranking.faults[0]?.since).toBe(day(34));
  });

  it("leaves the colour spread out, since it follows from the rest", () => {
    const parameters = faultEvidence(input).components.map(({ parameter }) => parameter);
    expect(parameters).not.toContain("colourSpread");
  });

  it("uses what a strip has when a patch was not read, and says so", () => {
    const { dMax: _, ...rest } = strips.at(-1)?.patches ?? {};
    const last = { ...paperStrip(day(39), 0), patches: rest };
    const evidence = faultEvidence({ ...input, strips: [...strips.slice(0, 39), last] });
    expect(evidence.components).toHaveLength(9);
    expect(evidence.warnings.join()).toContain("D-max");
    expect(rankFaults(evidence).leading).toBe("under-active");
  });

  it("ranks on a process that has fewer parameters", () => {
    const parameters = colourPaperProcess.parameters.filter(({ id }) =>
      ["dMin", "ld"].includes(id),
    );
    const evidence = faultEvidence({
      ...input,
      specification: { ...colourPaperProcess, parameters },
    });
    expect(evidence.components).toHaveLength(6);
    expect(rankFaults(evidence).faults.length).toBeGreaterThan(10);
  });

  it("refuses a base period that is too short, or reaches to the last strip, or is empty", () => {
    const from = "2026-07-01";
    expect(() => faultEvidence({ ...input, basePeriod: { from, to: "2026-07-03" } })).toThrow(
      /at least 5 whole strips/,
    );
    expect(() => faultEvidence({ ...input, basePeriod: { from, to: "2026-08-31" } })).toThrow(
      /ends before the strips to be explained/,
    );
    const later = { from: "2027-01-01", to: "2027-02-01" };
    expect(() => faultEvidence({ ...input, basePeriod: later })).toThrow(/strips were run/);
  });

  it("warns of few strips in the base period", () => {
    const base = { from: "2026-07-01", to: "2026-07-10" };
    expect(faultEvidence({ ...input, basePeriod: base }).warnings.join()).toContain("10 strips");
  });

  it("takes a reading that never varied as surely as it was rounded, and names it", () => {
    const hundredths = (d: number) => Math.round(100 * d) / 100;
    const rounded = strips.map((one) => {
      const patches = Object.entries(one.patches).map(([patch, { red, green, blue }]) => {
        const d = { red: hundredths(red), green: hundredths(green), blue: hundredths(blue) };
        return [patch, patch === "dMin" ? { ...d, red: 0.1 } : d];
      });
      return { ...one, patches: Object.fromEntries(patches) };
    });
    const evidence = faultEvidence(frozen({ ...input, strips: rounded }));
    expect(evidence.noise[0]?.[0]).toBeCloseTo(0.01 ** 2 / 12, 12);
    expect(evidence.warnings.join()).toMatch(/never varied .* reading to 0\.01: D-min, red$/);
    expect(rankFaults(evidence).leading).toBe("under-active");
  });

  it("takes no strips of another process", () => {
    expect(() => faultEvidence({ ...input, specification: colourNegativeProcess })).toThrow();
  });
});

describe("stripCovariance", () => {
  it("keeps variances, shrinks covariances, and can always be inverted", () => {
    const rows = Array.from({ length: 6 }, () => {
      const whole = normal();
      return Array.from({ length: 10 }, () => 0.01 * (whole + 0.1 * normal()));
    });
    const { covariance, shrinkage } = stripCovariance(rows);
    expect(shrinkage).toBeGreaterThan(0);
    expect(shrinkage).toBeLessThanOrEqual(1);
    // Six strips of ten readings: the sample covariance alone could not be inverted.
    const noise = covariance.slice(0, 9).map((row) => row.slice(0, 9));
    expect(() => rankFaults(window([strip(0, 0.1, 0.1)], { noise }))).not.toThrow();
  });
  it("finds the covariance of many strips", () => {
    const rows = Array.from({ length: 4000 }, () => {
      const whole = normal();
      return [0.01 * (whole + normal()), 0.01 * (whole + normal())];
    });
    const { covariance, lagOne } = stripCovariance(rows);
    expect(covariance[0]?.[0]).toBeCloseTo(2e-4, 4);
    expect((covariance[0]?.[1] ?? 0) / 1e-4).toBeGreaterThan(0.8);
    expect(lagOne).toBeLessThan(0.05);
  });
  it("refuses a reading that never varies, too few strips, ragged rows", () => {
    const rows = Array.from({ length: 8 }, () => [normal(), 0.3]);
    expect(() => stripCovariance(rows)).toThrow(/never varies/);
    expect(() => stripCovariance(rows, { resolution: Number.NaN })).toThrow(/resolution is NaN/);
    const { covariance } = stripCovariance(rows, { resolution: 0.01 });
    expect(covariance[1]?.[1]).toBeCloseTo(0.01 ** 2 / 12, 12);
    expect(covariance[0]).toEqual(
      stripCovariance(rows.map(([a]) => [a ?? 0])).covariance[0]?.concat(0),
    );
    expect(() => stripCovariance(rows.slice(0, 3))).toThrow(/at least 5/);
    expect(() => stripCovariance([[1], [1, 2], [1], [1], [1]])).toThrow(/length/);
  });
});

describe("signatureFromEpisodes", () => {
  const noise = window([]).noise;
  const base = { table: colourNegativeFaults, fault: "developer-too-warm", components, noise };
  const truth = strip(0.004, 0.06, 0.02);
  const episodesOf = (n: number) =>
    Array.from({ length: n }, (_, e) => {
      const size = 1 + (e % 3);
      return { deviation: truth.map((v) => size * v + 0.003 * normal()), strips: 5 };
    });

  it("nears the lab's own pattern as episodes gather", () => {
    const misses = [1, 4, 20].map((n) => {
      const { signature } = signatureFromEpisodes({ ...base, episodes: episodesOf(n) });
      return Math.max(...signature.mean.map((v, j) => Math.abs(v - (truth[j] ?? 0))));
    });
    expect(misses[2]).toBeLessThan(0.005);
    expect(misses[2]).toBeLessThan(misses[0] ?? 0);
  });

  it("finds the sizes of the episodes", () => {
    const { sizes } = signatureFromEpisodes({ ...base, episodes: episodesOf(12) });
    expect(sizes[0]).toBeCloseTo(1, 0);
    expect((sizes[2] ?? 0) / (sizes[0] ?? 1)).toBeGreaterThan(2.4);
  });

  it("tells the lab's own fault from others of its old group", () => {
    const { signature } = signatureFromEpisodes({ ...base, episodes: episodesOf(20) });
    const table = withSignature(colourNegativeFaults, "developer-too-warm", signature);
    const seen = truth.map((v) => 2 * v);
    const ranking = rankFaults(window([seen, seen, seen]), { table });
    expect(ranking.faults[0]?.id).toBe("developer-too-warm");
    expect(ranking.faults[0]?.group).toBe("own-developer-too-warm");
    const before = rankFaults(window([seen, seen, seen]));
    expect(ranking.faults[0]?.probability).toBeGreaterThan(before.faults[0]?.probability ?? 1);
  });

  it("warns where the lab's own goes against a published direction", () => {
    const against = { deviation: strip(0.01, -0.01, 0.14), strips: 5 };
    const { warnings } = signatureFromEpisodes({ ...base, episodes: Array(20).fill(against) });
    expect(warnings.join()).toContain("against the published direction");
  });

  it("refuses an episode that does not show the fault, and faults without direction", () => {
    const episodes = [{ deviation: truth.map((v) => -v) }];
    expect(() => signatureFromEpisodes({ ...base, episodes })).toThrow(/labelled rightly/);
    expect(() => signatureFromEpisodes({ ...base, episodes: [] })).toThrow(/at least one/);
    expect(() =>
      signatureFromEpisodes({ ...base, fault: "densitometer-zero", episodes: episodesOf(2) }),
    ).toThrow(/either way/);
    expect(() => signatureFromEpisodes({ ...base, fault: "too-warm", episodes })).toThrow(/fault/);
  });
});
