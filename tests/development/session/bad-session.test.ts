import { describe, expect, it } from "vitest";
import {
  developingTank,
  developingTanks,
  InputError,
  photoFormat,
  planSession,
  sessionLines,
} from "wetside";
import { developer, evening, rolls } from "./session-request.ts";

const plan = (more: object) => () => planSession({ ...evening, ...more } as never);

describe("a session that cannot be", () => {
  it.each([
    ["no films", { films: [] }, "write at least one film"],
    [
      "films with one name",
      { films: [...rolls(1), ...rolls(1)] },
      "a different name for each film",
    ],
    ["a film without a name", { films: rolls(1, { name: " " }) }, 'a name such as "roll 1"'],
    ["an unknown format", { films: rolls(1, { format: "135-63" }) }, 'did you mean "135-36"'],
    [
      "paper",
      { films: rolls(1, { format: "4x6in" }) },
      'films[0].format is "4x6in"; write one of "135-36"',
    ],
    [
      "film by the metre",
      { films: rolls(1, { format: "35mm-metre" }) },
      'films[0].format is "35mm-metre"; write one of "135-36"',
    ],
    [
      "a spiral the tank lacks",
      { films: rolls(1, { format: "4x5in-sheet" }) },
      "a tank with a spiral",
    ],
    [
      "a tank too small",
      { films: rolls(1, { format: "120" }), tank: "steel, 1 reel" },
      "takes 135-36",
    ],
    ["a tank nobody knows", { tank: "plastic, 2reels" }, 'did you mean "plastic, 2 reels"'],
    ["no developing time", { films: rolls(1, { developmentTimeMin: 0 }) }, "greater than 0 min"],
    ["no time at all", { films: [{ name: "a", format: "120" }] }, "the time for this film"],
    ["a speed of zero", { films: rolls(1, { exposureIndex: 0 }) }, "an ISO arithmetic speed"],
    ["no developer", { developers: [] }, "write at least one developer"],
    [
      "two developers of one name",
      { developers: [developer, developer] },
      "no other developer has",
    ],
    [
      "a film with two developers to choose from",
      {
        developers: [developer, { ...developer, name: "other" }],
      },
      'write one of "stock developer", "other"',
    ],
    ["a ratio with a colon", { developers: [{ ...developer, dilution: "1:1" }] }, "1+1"],
    [
      "a ratio with unit words",
      {
        developers: [{ ...developer, dilution: "10 ml + 500 ml" }],
      },
      "write",
    ],
    [
      "a use that is neither",
      { developers: [{ ...developer, use: "oneshot" }] },
      'mean "one-shot"',
    ],
    ["a bottle below empty", { developers: [{ ...developer, bottleMl: -1 }] }, "at least 0 mL"],
    [
      "a date that is none",
      { developers: [{ ...developer, expiresOn: "31.1.2025" }] },
      "2025-06-30",
    ],
    ["°F for °C", { temperatures: { developerC: 68, roomC: 20 } }, "68 °F would be 20.0 °C"],
    [
      "a bath hotter than the emulsion stands",
      {
        temperatures: { developerC: 40, roomC: 20 },
      },
      "at most 35 °C",
    ],
    ["98 for 36.7 °C", { temperatures: { developerC: 98, roomC: 20 } }, "98 °F would be 36.7 °C"],
    ["a room of 58", { temperatures: { developerC: 20, roomC: 58 } }, "58 °F would be 14.4 °C"],
    ["a misspelt part", { tempratures: {} }, "did you mean temperatures?"],
    ["a misspelt time", { handling: { pourIn: 20 } }, "did you mean pourInS?"],
    [
      "a misspelt bath temperature",
      { temperatures: { developerC: 20, roomC: 20, washc: 10 } },
      "washC",
    ],
    ["a yes in words", { preWash: "no" }, "true or false"],
    ["a wash aid in words", { wash: { by: "flow", aid: "no" } }, "true or false"],
    ["a bottle that is not in a list", { bottles: "fixer" }, "write a list"],
    [
      "minutes and seconds",
      { films: rolls(1, { developmentTimeMin: "7:30" as never }) },
      "7:30 is 7.5",
    ],
    ["a format by its nickname", { films: rolls(1, { format: "35 mm" }) }, 'write "135-36"'],
    [
      "a developer too cold for its model",
      { temperatures: { developerC: 11, roomC: 11 } },
      "temperatures.developerC is 11",
    ],
    [
      "a water bath hotter than the emulsion stands",
      { temperatures: { developerC: 20, roomC: 20, waterBathC: 60 } },
      "temperatures.waterBathC is 60",
    ],
    ["a room in °F", { temperatures: { developerC: 20, roomC: 68 } }, "68 °F would be 20.0 °C"],
    [
      "a thermometer far off",
      {
        temperatures: { developerC: 20, roomC: 20, thermometerErrorC: 20 },
      },
      "reading minus true temperature",
    ],
    ["no temperatures", { temperatures: undefined }, "{ developerC, roomC }"],
    ["a start that cannot be read", { start: "half past seven" }, 'such as "19:30"'],
    ["a process nobody knows", { process: "color negative" }, 'did you mean "colour negative"'],
    ["an agitation nobody knows", { agitation: "contnuous" }, 'did you mean "continuous"'],
    [
      "a black-and-white developer as a bottle",
      {
        bottles: [{ bath: "developer", volumeMl: 500 }],
      },
      "under developers",
    ],
    [
      "a bath twice",
      {
        bottles: [
          { bath: "fixer", volumeMl: 500 },
          { bath: "fixer", volumeMl: 500 },
        ],
      },
      "each bath once",
    ],
    ["a stop nobody knows", { stop: "vinegar" }, 'write one of "acid", "water"'],
    ["a rinse nobody knows", { rinseWater: "distiled" }, 'did you mean "distilled"'],
    ["a push without its time", { films: rolls(1, { pushStops: 2 }) }, "the time for that index"],
    ["a wash nobody knows", { wash: { by: "flows" } }, 'did you mean "flow"'],
    ["no water in the flow", { wash: { by: "flow", flowMlPerMin: 0 } }, "greater than 0 mL/min"],
    ["broken changes", { wash: { by: "changes", changes: 2.5 } }, "whole number"],
    ["handling of half a second", { handling: { pourInS: 0.5 } }, "a whole number"],
    [
      "a least amount that fills more than the tank",
      {
        developers: [{ ...developer, minimumStockMlPerFilm: 400 }],
      },
      "stronger dilution or a bigger tank",
    ],
    ["a development too short to be even", { films: rolls(1, { developmentTimeMin: 1 }) }, "2 min"],
    [
      "a developer too cold for any model",
      { temperatures: { developerC: 6, roomC: 6 } },
      "rate model",
    ],
    ["no request", { films: undefined }, "write at least one film"],
  ])("is refused for %s", (_, more, advice) => {
    expect(plan(more)).toThrow(InputError);
    expect(plan(more)).toThrow(advice);
  });

  it("is refused when there is none", () => {
    expect(() => planSession(null as never)).toThrow(InputError);
    expect(() => sessionLines({} as never)).toThrow(InputError);
  });
});

describe("the tanks", () => {
  it("hold what their spirals take, and only films that are in the list of formats", () => {
    for (const tank of developingTanks) {
      expect(() => developingTank(tank)).not.toThrow();
      for (const spiral of tank.spirals) {
        expect(spiral.heightMm).toBeLessThanOrEqual(tank.columnHeightMm);
        const fits = Math.floor(tank.columnHeightMm / spiral.heightMm);
        expect(fits * spiral.coverMl).toBeLessThanOrEqual(tank.fullMl);
        for (const format of spiral.formats) expect(photoFormat(format).kind).toBe("film");
      }
    }
  });

  it("are refused when their figures cannot be", () => {
    const tank = developingTank("plastic, 1 reel");
    expect(() => developingTank({ ...tank, fullMl: 0 })).toThrow(InputError);
    expect(() => developingTank({ ...tank, coolingPerMin: 2 })).toThrow(InputError);
    expect(() => developingTank(undefined as never)).toThrow("plastic, 2 reels");
  });
});
