import { describe, expect, it } from "vitest";
import {
  correctBath,
  correctionForAim,
  freshTank,
  starterForAim,
  tankOverDays,
  tankSteadyState,
} from "wetside/replenishment";
import { developer, unevenDays } from "./example-tank.ts";

const bath = Object.freeze({
  volumeL: 20,
  gPerL: Object.freeze({ "developing agent": 4, bromide: 1.4 }),
});

describe("a fresh tank", () => {
  it("begins where replenisher, starter and water put it", () => {
    const { tank, sheet } = freshTank(developer, {
      replenisherMlPerL: 850,
      starterMlPerL: 25,
      starterGPerL: { bromide: 30 },
    });
    expect(tank.components.map((each) => each.startGPerL)).toEqual(
      [5.2 * 0.85, 0.4 * 0.85 + 30 * 0.025, 36 * 0.85, 4.5 * 0.85].map((value) =>
        expect.closeTo(value, 12),
      ),
    );
    expect(sheet.steps.reduce((sum, step) => sum + step.amount, 0)).toBeCloseTo(20_000, 9);
    expect(sheet.cautions.length).toBeGreaterThan(0);
    expect(tankOverDays(tank, unevenDays(3)).days).toHaveLength(3);
  });
  it("mixed with the starter for its aim stands still from the first day", () => {
    const bromide = { name: "bromide", replenisherGPerL: 0.4, releasedGPerM2: 0.5 };
    const tank = { volumeL: 20, rateMlPerM2: 600, components: [bromide] };
    const aimGPerL = tankSteadyState(tank, 3).components[0]?.steadyGPerL ?? Number.NaN;
    const starterMlPerL = starterForAim({ aimGPerL, replenisherGPerL: 0.4, starterGPerL: 30 });
    const mixed = freshTank(tank, {
      replenisherMlPerL: 1000 - starterMlPerL,
      starterMlPerL,
      starterGPerL: { bromide: 30 },
    });
    for (const day of tankOverDays(mixed.tank, unevenDays(20)).days) {
      expect(day.concentrationGPerL.bromide).toBeCloseTo(aimGPerL, 12);
    }
  });
  it("refuses a starter with something the tank does not have, and an aim out of reach", () => {
    const mix = { replenisherMlPerL: 900, starterMlPerL: 30 };
    expect(() => freshTank(developer, { ...mix, starterGPerL: { bromid: 30 } })).toThrow(
      '"bromide"',
    );
    expect(() => freshTank(developer, { ...mix, starterMlPerL: 200 })).toThrow(
      "together fill the litre",
    );
    expect(() => starterForAim({ aimGPerL: 40, replenisherGPerL: 0.4, starterGPerL: 30 })).toThrow(
      "from 0.4 to 30",
    );
    expect(starterForAim({ aimGPerL: 1, replenisherGPerL: 1, starterGPerL: 1 })).toBe(0);
  });
});

describe("a correction", () => {
  it("by water thins everything alike", () => {
    const { components, keptShare } = correctBath(bath, [
      { add: "water", litres: 1, how: "dump first" },
    ]);
    for (const { change } of components) expect(change).toBeCloseTo(-0.05, 12);
    expect(keptShare).toBeCloseTo(0.95, 12);
  });
  it("by starter moves one thing and hardly the other", () => {
    const { components } = correctBath(bath, [
      { add: "starter", litres: 0.2, gPerL: { bromide: 30 }, how: "overflow" },
    ]);
    expect(components[1]?.afterGPerL).toBeCloseTo((1.4 + 0.01 * 30) / 1.01, 12);
    expect(components[0]?.afterGPerL).toBeCloseTo(4 / 1.01, 12);
  });
  it("of the whole tank leaves only what is added", () => {
    const { components, keptShare, drainedL } = correctBath(bath, [
      {
        add: "replenisher",
        litres: 20,
        gPerL: { "developing agent": 5.2, bromide: 0.4 },
        how: "dump first",
      },
    ]);
    expect(components.map((each) => each.afterGPerL)).toEqual([5.2, 0.4]);
    expect([keptShare, drainedL]).toEqual([0, 20]);
  });
  it("goes through its steps in order and gives every state", () => {
    const steps = [
      { add: "water", litres: 2, how: "dump first" },
      { add: "starter", litres: 0.1, gPerL: { bromide: 30 }, how: "overflow" },
    ] as const;
    const both = correctBath(bath, steps);
    const first = correctBath(bath, [steps[0]]);
    expect(both.steps).toHaveLength(2);
    expect(both.steps[0]).toEqual(first.steps[0]);
    expect(both.drainedL).toBeCloseTo(2.1, 12);
  });
  it("approaches a slow overflow the finer it is divided: (1 − f)^(1/f) towards 1/e", () => {
    const kept = [0.25, 0.1, 0.05, 0.001].map(
      (fraction) =>
        correctBath(bath, [
          {
            add: "water",
            litres: 20 * fraction,
            how: "dump first",
            times: Math.round(1 / fraction),
          },
        ]).keptShare,
    );
    // 0.3164, 0.3487 and 0.3585 against 0.3679 in one continuous turnover.
    expect(kept.slice(0, 3)).toEqual([0.3164, 0.3487, 0.3585].map((v) => expect.closeTo(v, 4)));
    expect(kept[3]).toBeCloseTo(Math.exp(-1), 3);
  });
  it("answers a step typed in gallons with the litres", () => {
    const step = { add: "water", litres: "1 gal" as unknown as number, how: "overflow" as const };
    expect(() => correctBath({ volumeL: 20, gPerL: { bromide: 1 } }, [step])).toThrow(
      "write litres: 3.7854 for US gallons, 4.5461 for imperial gallons",
    );
  });
  it("refuses more than the tank holds, unknown names, and no steps", () => {
    const step = { add: "water", litres: 21, how: "overflow" } as const;
    expect(() => correctBath(bath, [step])).toThrow("no more than the tank holds");
    expect(() => correctBath(bath, [{ ...step, litres: 1, gPerL: { silver: 1 } }])).toThrow(
      "add it to the bath with 0",
    );
    expect(() => correctBath(bath, [])).toThrow("at least one step");
    expect(() => correctBath({ ...bath, gPerL: { bromide: -1 } }, [step])).toThrow(
      "gPerL of bromide is -1",
    );
  });
});

describe("a correction for an aim", () => {
  const bath = { volumeL: 20, gPerL: { bromide: 1.5, "developing agent": 3.1 } };
  const fresh = { bromide: 0.3, "developing agent": 5.2 };
  /** Two evaluations of one power. */
  const ROUNDING = 1e-12;

  it("ends at the aim, whichever way and in however many additions", () => {
    for (const how of ["dump first", "overflow"] as const) {
      for (const times of [1, 2, 5]) {
        const wanted = { component: "bromide", aimGPerL: 1.2, add: "replenisher", how, times };
        const { corrected, litres, step } = correctionForAim(bath, { ...wanted, addGPerL: fresh });
        const [bromide, agent] = corrected.components;
        expect(Math.abs((bromide?.afterGPerL ?? 0) - 1.2)).toBeLessThan(ROUNDING);
        expect(agent?.afterGPerL).toBeGreaterThan(3.1);
        expect(correctBath(bath, [step]).components).toEqual(corrected.components);
        expect(corrected.drainedL).toBeCloseTo(litres * times, 12);
      }
    }
  });
  it("is a quarter of the tank by hand arithmetic, and less in one dump than by overflowing", () => {
    const wanted = { component: "bromide", aimGPerL: 1.2, add: "replenisher", addGPerL: fresh };
    const dumped = correctionForAim(bath, { ...wanted, how: "dump first" }).litres;
    const overflowed = correctionForAim(bath, { ...wanted, how: "overflow" }).litres;
    expect(dumped).toBeCloseTo((20 * (1.5 - 1.2)) / (1.5 - 0.3), 12);
    expect(overflowed).toBeCloseTo((20 * 0.3) / 0.9, 12);
  });
  it("strengthens with starter, and thins with water down to nothing only by dumping all", () => {
    const starter = {
      component: "bromide",
      aimGPerL: 1.8,
      add: "starter",
      addGPerL: { bromide: 30 },
    };
    expect(correctionForAim(bath, { ...starter, how: "dump first" }).litres).toBeCloseTo(
      (20 * 0.3) / 28.5,
      12,
    );
    const away = { component: "bromide", aimGPerL: 0, add: "water" };
    expect(correctionForAim(bath, { ...away, how: "dump first" }).litres).toBe(20);
    expect(() => correctionForAim(bath, { ...away, how: "overflow" })).toThrow(
      "write an aim from 0",
    );
  });
  it("says what to write where it cannot be done", () => {
    const wanted = { component: "bromide", aimGPerL: 1.8, add: "water", how: "overflow" } as const;
    expect(() => correctionForAim(bath, wanted)).toThrow(
      "an aim from 0 to 1.5 g/L, or something else",
    );
    expect(() => correctionForAim(bath, { ...wanted, aimGPerL: 1.5 })).toThrow("there already");
    expect(() => correctionForAim(bath, { ...wanted, aimGPerL: 0.3 })).toThrow(
      "write more of them",
    );
    expect(() => correctionForAim(bath, { ...wanted, component: "bromid" })).toThrow('"bromide"');
    const gallons = { ...bath, volumeL: "5 gal" as unknown as number };
    expect(() => correctionForAim(gallons, wanted)).toThrow("18.927 for US gallons");
  });
});
