import { describe, expect, it } from "vitest";
import {
  afterCheck,
  colourNegativeFaults,
  type FaultRanking,
  faultById,
  parseFaultTable,
  rankFaults,
  separatingCheck,
} from "wetside/control";
import { frozen } from "../example-strips.ts";
import { components, strip, window } from "./window.ts";

const ROUNDING = 1e-9; // probabilities are sums of a few dozen doubles

const still = strip(0, 0, 0);
const low = strip(-0.008, -0.12, -0.08);
const groupOf = (ranking: FaultRanking, id: string) =>
  ranking.groups.find((group) => group.id === id)?.probability ?? 0;

describe("rankFaults", () => {
  it("names the group whose pattern is seen", () => {
    const cases = [
      [strip(0.015, 0.12, 0.08), "over-active"],
      [low, "under-active"],
      [strip(0.055, 0.07, 0.12), "contaminated"],
      [strip(0.002, -0.03, -0.14), "contrast-down"],
      [strip(0.004, 0.03, 0.14), "contrast-up"],
      [strip(0.05, 0.05, 0), "zero-off"],
      [strip(0.06, 0.08, -0.05), "strip-fogged"],
    ] as const;
    for (const [deviation, group] of cases) {
      const ranking = rankFaults(window([deviation, deviation, deviation]));
      const named = group === "strip-fogged" ? ranking.faults[0]?.group : ranking.leading;
      expect(named, JSON.stringify(deviation)).toBe(group);
    }
  });

  it("shows faults of one signature as equally likely and proposes the check that separates them", () => {
    const [first, second] = rankFaults(window([still, still, low, low])).faults;
    expect([first?.id, second?.id].sort()).toEqual(["developer-too-cool", "developer-too-short"]);
    expect(first?.probability).toBeCloseTo(second?.probability ?? 0, 12);
    const { check } = rankFaults(window([still, still, low, low]));
    expect(["stopwatch", "thermometer"]).toContain(check?.id);
    expect(check?.bits).toBeGreaterThan(0.5);
  });

  it("tells a fault that grows from one that is there at once by the course alone", () => {
    const growing = [0, 0, 0, 0.2, 0.4, 0.6, 0.8, 1].map((g) => low.map((v) => g * v));
    const grown = rankFaults(window(growing));
    expect(grown.faults[0]?.id).toBe("under-replenished");
    expect(grown.faults[0]?.course).toBe("gradual");
    const at = rankFaults(window([still, still, still, still, low, low, low, low]));
    expect(at.faults[0]?.course).toBe("step");
    expect(at.faults[0]?.since).toBe("2026-08-05T07:10");
    const slow = at.faults.find(({ id }) => id === "under-replenished");
    expect(slow?.probability).toBeLessThan(0.15);
  });

  it("lays the blame on the strip when the repeat is back at its aim, and not when it is not", () => {
    const fogged = strip(0.06, 0.09, -0.05);
    const cleared = rankFaults(window([still, still, fogged, still]));
    expect(cleared.faults[0]?.id).toBe("strip-fogged");
    expect(cleared.faults[0]?.course).toBe("single strip");
    const low1 = rankFaults(window([still, still, low, still]));
    expect(groupOf(low1, "under-active")).toBeLessThan(0.05);
  });

  it("says that nothing is wrong for strips within their noise", () => {
    const ranking = rankFaults(window([still, strip(0.003, -0.004, 0.002), still]));
    expect(ranking.leading).toBe("nothing-wrong");
    expect(ranking.nothingWrong).toBeGreaterThan(0.8);
    expect(ranking.sentence).toContain("printer");
  });

  it("says that none of these fits where colours go against each other", () => {
    const odd = [-0.06, 0.07, 0, 0.1, -0.13, 0.02, -0.1, 0.02, 0.15];
    const ranking = rankFaults(window([odd, odd, odd]));
    expect(ranking.leading).toBe("none-of-these");
    expect(ranking.noneOfThese).toBeGreaterThan(0.5);
  });

  it("measures the size in multiples of the limit", () => {
    const [first] = rankFaults(window([low, low, low, low])).faults;
    const { size = 0, sizeSd = 0 } = first ?? {};
    expect(Math.abs(size - 2)).toBeLessThan(2 * sizeSd);
    expect(sizeSd).toBeLessThan(0.8);
  });

  it("says of each reading what it speaks for, and what the fault leaves unexplained", () => {
    const partly = [...low];
    partly[8] = 0.06;
    const ranking = rankFaults(window([partly, partly, partly]));
    const against = ranking.evidence.find((e) => e.parameter === "hdLessLd" && e.colour === "blue");
    expect(against?.speaks).toBe("against");
    expect(against?.words).toContain("foretells −");
    expect(ranking.residual.notExplained.join()).toContain("HD − LD (contrast), blue is +0.060");
    const whole = rankFaults(window([low, low, low]));
    expect(whole.residual.notExplained).toEqual([]);
    expect(whole.residual.probability).toBeGreaterThan(0.05);
    expect(whole.evidence.filter(({ speaks }) => speaks === "against")).toEqual([]);
  });

  it("warns of one strip alone, and of a cause that would not explain everything", () => {
    expect(rankFaults(window([low])).warnings.join()).toContain("one strip alone");
    expect(rankFaults(window([low, low])).warnings.join()).not.toContain("one strip alone");
  });

  it("cautions against dosing before the check, and names the safety data sheets", () => {
    const { cautions } = rankFaults(window([low, low]));
    expect(cautions.join(" ")).toMatch(/correct no bath before the check/);
    expect(cautions.join(" ")).toMatch(/safety data sheets/);
  });

  it("still ranks on part of the readings, and says less", () => {
    const three = components.filter(({ parameter }) => parameter === "ld");
    const ranking = rankFaults(window([[-0.12, -0.12, -0.12]], { components: three }));
    const whole = rankFaults(window([low]));
    expect(groupOf(ranking, "under-active")).toBeGreaterThan(0.1);
    expect(groupOf(ranking, "under-active")).toBeLessThan(groupOf(whole, "under-active"));
  });

  it("leaves out parameters of which no signature speaks, with a warning", () => {
    const odd = { parameter: "midtone", name: "Midtone", colour: "red" as const, limit: 0.05 };
    const more = window([[...low, 0.3]], { components: [...components, odd] });
    const ranking = rankFaults(more);
    expect(ranking.warnings.join()).toContain("no signature speaks of Midtone, red");
    expect(ranking.leading).toBe(rankFaults(window([low])).leading);
    expect(() => rankFaults(window([[0.3]], { components: [odd] }))).toThrow(
      /none of the parameters has a signature.*dMin/,
    );
  });

  it("weighs the lab's own frequencies", () => {
    const often = rankFaults(window([low, low]), { frequencies: { "developer-too-short": 9 } });
    expect(often.faults[0]?.id).toBe("developer-too-short");
    const never = rankFaults(window([low, low]), { frequencies: { "developer-too-short": 0 } });
    expect(never.faults.find(({ id }) => id === "developer-too-short")?.probability).toBe(0);
    expect(() => rankFaults(window([low]), { frequencies: { "developer-to-short": 2 } })).toThrow(
      /did you mean "developer-too-short"/,
    );
  });

  it("changes nothing it is given and survives JSON", () => {
    const given = frozen(window([still, low]));
    const ranking = rankFaults(given);
    expect(JSON.parse(JSON.stringify(ranking))).toEqual(ranking);
    const sum = ranking.faults.reduce((s, { probability }) => s + probability, 0);
    expect(Math.abs(sum + ranking.noneOfThese + ranking.nothingWrong - 1)).toBeLessThan(ROUNDING);
  });

  it("refuses what it cannot use, saying what to write", () => {
    expect(() => rankFaults(window([]))).toThrow(/at least one strip/);
    expect(() => rankFaults(window([[0.1]]))).toThrow(/deviations\[0\]\.length is 1; write 9/);
    expect(() => rankFaults(window([low.map(() => Number.NaN)]))).toThrow(/finite/);
    expect(() => rankFaults(window([low], { process: "black-and-white" }))).toThrow(
      /tables for "colour-negative" and "colour-paper".*options\.table/,
    );
    const singular = components.map(() => components.map(() => 1e-4));
    expect(() => rankFaults(window([low], { noise: singular }))).toThrow(
      /singular.*stripCovariance/,
    );
    expect(() => rankFaults(window([low], { noise: [] }))).toThrow(/9 rows of 9/);
    const crooked = components.map((_, i) => components.map((_, j) => (i === j ? 1e-4 : i * 1e-6)));
    expect(() => rankFaults(window([low], { noise: crooked }))).toThrow(/mirror/);
    expect(() => rankFaults(window([low]), { nothingWrong: 0.95, noneOfThese: 0.1 })).toThrow(
      /below 1/,
    );
  });
});

describe("faultById and parseFaultTable", () => {
  it("name the nearest fault for one the table lacks", () => {
    expect(() => faultById(colourNegativeFaults, "developer-to-warm")).toThrow(
      /did you mean "developer-too-warm"/,
    );
  });
  it("list everything that is wrong with a table at once", () => {
    const bad = JSON.parse(JSON.stringify(colourNegativeFaults));
    bad.patterns["over-active"].published[0].sign = "-";
    bad.faults[0].pattern = "over-activ";
    bad.faults[1].course.step = 2;
    bad.faults[2].id = bad.faults[3].id;
    expect(() => parseFaultTable(bad)).toThrow(
      /does not go the published way.*over-active.*sum to 1.*stands twice/s,
    );
    expect(() => parseFaultTable(null)).toThrow(/write an object/);
    expect(parseFaultTable(JSON.stringify(colourNegativeFaults))).toEqual(colourNegativeFaults);
    expect(() => parseFaultTable("{ process")).toThrow(/not JSON/);
  });
});

describe("separatingCheck and afterCheck", () => {
  const ranking = rankFaults(window([still, still, low, low]));
  it("move the odds by Bayes' rule and propose another check", () => {
    const cold = afterCheck(ranking, [{ check: "thermometer", outcome: "below its temperature" }]);
    expect(cold.leading).toBe("developer-too-cool");
    expect(cold.hypotheses[0]?.probability).toBeGreaterThan(0.9);
    const right = afterCheck(ranking, [{ check: "thermometer", outcome: "at its temperature" }]);
    expect(right.leading).toBe("developer-too-short");
    expect(right.next?.id).not.toBe("thermometer");
    expect(right.hypotheses.reduce((s, h) => s + h.probability, 0)).toBeCloseTo(1, 12);
  });
  it("leave the ranking as it was where no check was made", () => {
    const same = afterCheck(ranking, []);
    expect(same.hypotheses[0]?.probability).toBeCloseTo(ranking.faults[0]?.probability ?? 0, 12);
  });
  it("refuse an unknown check or outcome", () => {
    expect(() => afterCheck(ranking, [{ check: "thermomter", outcome: "x" }])).toThrow(
      /thermometer/,
    );
    expect(() => afterCheck(ranking, [{ check: "stopwatch", outcome: "longer" }])).toThrow(
      /longer than set/,
    );
  });
  it("find the information of an ideal check of two even odds to be one bit", () => {
    const two = ["a", "b"].map((id) => ({ id, name: id, probability: 0.5 }));
    const ideal = { id: "c", name: "look", tool: "eyes", minutes: 1, outcomes: ["a", "b"] };
    const check = {
      ...ideal,
      otherwise: [0.5, 0.5],
      expects: { a: [1, 0], b: [0, 1] },
      howObtained: "test",
    };
    expect(separatingCheck(two, [check])?.bits).toBeCloseTo(1, 12);
    const blind = { ...check, expects: {} };
    expect(separatingCheck(two, [blind])).toBeNull();
    expect(() => separatingCheck([], [check])).toThrow(/at least two/);
  });
});
