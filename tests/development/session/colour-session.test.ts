import { describe, expect, it } from "vitest";
import { planSession, processRecipes, type SessionRequest } from "wetside";

const negative: SessionRequest = {
  start: "14:00",
  process: "colour negative",
  films: [{ name: "a", format: "135-36" }],
  tank: "plastic, 1 reel",
  temperatures: { developerC: 37.8, roomC: 20, waterBathC: 37.8 },
};

describe("a colour session at home", () => {
  it("keeps the fixed times of the process", () => {
    const session = planSession(negative);
    expect(session.batches[0]?.development?.timeS).toBe(195);
    expect(session.batches[0]?.fixS).toBeNull();
    expect(session.steps.map((each) => each.bath)).toEqual([
      "mix",
      "load",
      "pre-wash",
      "developer",
      "bleach",
      "first wash",
      "fixer",
      "wash",
      "final rinse",
      "hang",
    ]);
  });

  it("is quiet when the water bath holds the temperature, apart from the short time", () => {
    const { warnings } = planSession(negative);
    expect(warnings).toEqual([
      "batch 1: 3:15 is short for a tank by hand: fill and empty in one go, the same way each time",
    ]);
  });

  it("warns when the tank drifts out of tolerance, and says how warm to pour", () => {
    const temperatures = { developerC: 37.8, roomC: 20 };
    const session = planSession({ ...negative, temperatures });
    const text = session.warnings.join("\n");
    expect(text).toMatch(/averages 37\.\d\d °C over the step, 37\.8 ± 0\.15 °C is the tolerance/);
    const pour = Number(/have it at ([\d.]+) °C/.exec(text)?.[1]);
    const again = planSession({ ...negative, temperatures: { ...temperatures, developerC: pour } });
    // The advice is printed to 0.1 °C.
    const mean = again.batches[0]?.development?.effectiveTemperatureC ?? 0;
    expect(Math.abs(mean - 37.8)).toBeLessThan(0.06);
    expect(again.warnings.join()).not.toContain("is the tolerance");
  });

  it("gives the same advice without a pre-wash, the cold tank counted in", () => {
    const cold = { ...negative, preWash: false, temperatures: { developerC: 37.8, roomC: 20 } };
    const text = planSession(cold).warnings.join("\n");
    const pour = Number(/have it at ([\d.]+) °C/.exec(text)?.[1]);
    const again = planSession({ ...cold, temperatures: { developerC: pour, roomC: 20 } });
    const mean = again.batches[0]?.development?.effectiveTemperatureC ?? 0;
    expect(Math.abs(mean - 37.8)).toBeLessThan(0.06);
  });

  it("pushes in a tank of its own, and marks the time as from memory", () => {
    const films = [
      { name: "a", format: "135-36" },
      { name: "b", format: "135-36", pushStops: 1 },
    ];
    const session = planSession({ ...negative, films, tank: "plastic, 2 reels" });
    expect(session.batches.map((each) => each.development?.timeS)).toEqual([195, 225]);
    expect(session.splits[0]).toContain("pushed 1");
    expect(session.assumptions.join()).toContain("from memory");
  });

  it("asks for the kit's table when the developer is used again", () => {
    const bottles = [{ bath: "developer", volumeMl: 1000, filmsDone: 4 }];
    expect(planSession({ ...negative, bottles }).warnings.join()).toContain("kit's own table");
    const told = [
      { ...bottles[0], bath: "developer", volumeMl: 1000, timeIncreasePercentPerFilm: 2 },
    ];
    const session = planSession({ ...negative, bottles: told });
    expect(session.batches[0]?.development?.timeS).toBe(Math.round(195 * 1.08));
  });

  it("lets light in one minute into the reversal bath", () => {
    const session = planSession({
      ...negative,
      process: "colour reversal",
      temperatures: { developerC: 38, roomC: 20, waterBathC: 38 },
    });
    const bath = session.steps.find((each) => each.bath === "reversal bath");
    const lid = bath?.actions.find((each) => each.text.includes("lid may come off"));
    expect((lid?.atS ?? 0) - (bath?.startS ?? 0)).toBe(15 + 60);
  });

  it("refuses times, pushes and developers that do not belong to it", () => {
    const film = { name: "a", format: "135-36" };
    const plan = (more: object) => () => planSession({ ...negative, ...more });
    expect(plan({ films: [{ ...film, developmentTimeMin: 4 }] })).toThrow("fixed times");
    expect(plan({ films: [{ ...film, pushStops: 5 }] })).toThrow("write one of -1, 0, 1, 2");
    expect(
      plan({ developers: [{ name: "d", dilution: "stock", use: "re-used", bottleMl: 500 }] }),
    ).toThrow("among the bottles");
    expect(plan({ bottles: [{ bath: "blech", volumeMl: 500 }] })).toThrow('did you mean "bleach"');
  });

  it("waits where the developer bottle does not cover the films", () => {
    const bottles = [{ bath: "developer", volumeMl: 200 }];
    const session = planSession({ ...negative, bottles });
    expect(session.batches[0]?.runs).toBe(false);
    expect(session.batches[0]?.whyNot).toContain("290 mL are needed");
  });
});

describe("the recipes", () => {
  it("carry a source and how it was obtained for every step, and known agitation", () => {
    for (const recipe of processRecipes) {
      expect(recipe.steps.some((each) => each.bath === "developer")).toBe(true);
      expect(recipe.steps.map((each) => each.bath)).toContain(recipe.lightsOn.bath);
      for (const each of recipe.steps) {
        expect(each.source).not.toBe("");
        expect(each.howObtained).not.toBe("");
        if (each.capacityFilmsPerL !== undefined) expect(each.capacitySource).toBeTruthy();
      }
    }
  });
});
