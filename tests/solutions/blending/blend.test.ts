import { describe, expect, it } from "vitest";
import {
  blendToStrength,
  blendVolumes,
  correctTank,
  diluteToStrength,
  strengthAfterAdditions,
  wholeParts,
} from "wetside/solutions";

describe("blendToStrength", () => {
  it("gives the parts of the mixing cross", () => {
    const blend = blendToStrength({ first: 90, second: 40, target: 50, totalMl: 1000 });
    expect(blend).toMatchObject({ parts: [10, 40], firstMl: 200, secondMl: 800 });
  });
  it("takes either solution alone at its own strength", () => {
    expect(blendToStrength({ first: 9, second: 4, target: 9, totalMl: 5 }).secondMl).toBe(0);
    expect(blendToStrength({ first: 9, second: 4, target: 4, totalMl: 5 }).firstMl).toBe(0);
    expect(blendToStrength({ first: 4, second: 4, target: 4, totalMl: 5 }).firstMl).toBe(5);
  });
  it("refuses a strength that the two cannot give", () => {
    const wrong = (target: number) => () =>
      blendToStrength({ first: 80, second: 20, target, totalMl: 1 });
    expect(wrong(81)).toThrow("write a strength from 20 to 80");
    expect(wrong(19.9)).toThrow("write a strength from 20 to 80");
    expect(wrong(Number.NaN)).toThrow("target");
  });
});

describe("diluteToStrength", () => {
  it("keeps C1·V1 = C2·V2", () => {
    const { stockMl, waterMl } = diluteToStrength({ strength: 60, target: 12, totalMl: 750 });
    expect([stockMl, waterMl]).toEqual([150, 600]);
  });
  it("takes water alone for nothing and stock alone for all", () => {
    expect(diluteToStrength({ strength: 5, target: 0, totalMl: 9 }).waterMl).toBe(9);
    expect(diluteToStrength({ strength: 5, target: 5, totalMl: 9 }).waterMl).toBe(0);
  });
  it("refuses to make a stock stronger with water", () => {
    expect(() => diluteToStrength({ strength: 5, target: 6, totalMl: 9 })).toThrow("stronger");
  });
});

describe("blendVolumes", () => {
  it("weighs strengths by volume", () => {
    const portions = [
      { volumeMl: 300, strength: 1 },
      { volumeMl: 100, strength: 5 },
    ];
    expect(blendVolumes(portions)).toEqual({ volumeMl: 400, strength: 2 });
  });
  it("refuses nothing at all", () => {
    expect(() => blendVolumes([])).toThrow("at least one");
    expect(() => blendVolumes([{ volumeMl: 0, strength: 1 }])).toThrow("total volume");
    expect(() => blendVolumes([{ volumeMl: -1, strength: 1 }])).toThrow("portions[0].volumeMl");
  });
});

describe("correctTank", () => {
  const tank = { tankMl: 10_000, strength: 1.1, target: 1, addStrength: 0 };
  it("does nothing to a tank on its aim", () => {
    expect(correctTank({ ...tank, strength: 1 })).toMatchObject({ action: "nothing", addMl: 0 });
  });
  it("adds water to a strong bath that has room", () => {
    const done = correctTank({ ...tank, presentMl: 9000 });
    expect(done.action).toBe("add");
    expect(done.addMl).toBeCloseTo(900, 9);
    expect(done.finalMl).toBeCloseTo(9900, 9);
  });
  it("refuses to overfill, and says how much to dump first", () => {
    expect(() => correctTank(tank)).toThrow("dump 909.1 mL first, then add 909.1 mL");
    expect(() => correctTank({ ...tank, presentMl: 9500 })).toThrow("dump 409.1 mL first");
  });
  it("dumps and adds when allowed, to a full tank and no more", () => {
    const done = correctTank({ ...tank, dump: true });
    expect(done.finalMl).toBe(10_000);
    const kept = (10_000 - done.dumpMl) * 1.1 + done.addMl * 0;
    expect(kept / 10_000).toBeCloseTo(1, 12);
  });
  it("adds concentrate to a weak bath", () => {
    const weak = { tankMl: 5000, presentMl: 4000, strength: 0.9, target: 1, addStrength: 5 };
    expect(correctTank(weak).addMl).toBeCloseTo(100, 9);
  });
  it("replaces the whole bath when the corrector is the aim itself", () => {
    const done = correctTank({ tankMl: 100, strength: 2, target: 1, addStrength: 1, dump: true });
    expect(done).toMatchObject({ dumpMl: 100, addMl: 100 });
  });
  it("refuses a corrector on the wrong side", () => {
    expect(() => correctTank({ ...tank, addStrength: 1.05 })).toThrow("at most 1; 0 is water");
    const weak = { ...tank, strength: 0.9 };
    expect(() => correctTank({ ...weak, addStrength: 0 })).toThrow("at least 1, stronger");
    expect(() => correctTank({ ...weak, addStrength: 0.95 })).toThrow("at least 1");
  });
  it("refuses more in the tank than it holds", () => {
    expect(() => correctTank({ ...tank, presentMl: 10_001 })).toThrow(
      "no more than the tank holds",
    );
  });
});

describe("strengthAfterAdditions", () => {
  const five = { strength: 1, addStrength: 0, fraction: 0.05 };
  it("changes nothing for no additions, or for more of the same", () => {
    expect(strengthAfterAdditions({ ...five, times: 0, order: "overflow" })).toBe(1);
    const same = { ...five, addStrength: 1, times: 3, order: "dump first" } as const;
    expect(strengthAfterAdditions(same)).toBe(1);
  });
  it("goes a little further when as much is dumped first", () => {
    const overflow = strengthAfterAdditions({ ...five, times: 3, order: "overflow" });
    const dumped = strengthAfterAdditions({ ...five, times: 3, order: "dump first" });
    expect(dumped).toBeLessThan(overflow);
  });
  it("agrees with blending one portion at a time", () => {
    let strength = 0.8;
    for (let i = 0; i < 4; i++) {
      const portions = [{ volumeMl: 100, strength }];
      strength = blendVolumes([...portions, { volumeMl: 12, strength: 3 }]).strength;
    }
    const given = { strength: 0.8, addStrength: 3, fraction: 0.12, times: 4 };
    expect(strengthAfterAdditions({ ...given, order: "overflow" })).toBeCloseTo(strength, 12);
  });
  it("refuses an unknown order and half an addition", () => {
    expect(() => strengthAfterAdditions({ ...five, times: 1.5, order: "overflow" })).toThrow(
      "whole",
    );
    const wrong = { ...five, times: 1, order: "mix" as "overflow" };
    expect(() => strengthAfterAdditions(wrong)).toThrow('"dump first"');
  });
});

describe("wholeParts", () => {
  it("finds the pair of small numbers, in lowest terms", () => {
    expect(wholeParts(1)).toEqual([1, 1]);
    expect(wholeParts(0.5)).toEqual([1, 2]);
    expect(wholeParts(3 / 8)).toEqual([3, 8]);
    expect(wholeParts(Math.PI, 100)).toEqual([22, 7]);
  });
  it("treats a ratio and its inverse alike", () => {
    for (const ratio of [0.3724, 0.142, 0.9, 0.61]) {
      expect([...wholeParts(1 / ratio)].reverse()).toEqual(wholeParts(ratio));
    }
  });
  it("stays within the largest number allowed", () => {
    expect(wholeParts(1000, 12)).toEqual([12, 1]);
    expect(wholeParts(0.001, 12)).toEqual([1, 12]);
    expect(() => wholeParts(0)).toThrow("greater than 0");
  });
});
