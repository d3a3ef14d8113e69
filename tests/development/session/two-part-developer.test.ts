import { describe, expect, it } from "vitest";
import { InputError, planSession, type SessionDeveloper } from "wetside";
import { evening, rolls } from "./session-request.ts";

const parts = [
  { name: "part A", bottleMl: 25 },
  { name: "part B", bottleMl: 100 },
];
const twoPart: SessionDeveloper = {
  name: "pyro",
  dilution: "1+2+97",
  use: "one-shot",
  parts,
};
const plan = (developer: object, count = 2) =>
  planSession({
    ...evening,
    films: rolls(count),
    developers: [developer as SessionDeveloper],
  });

describe("a developer that comes in two parts", () => {
  it("takes from each bottle its own share", () => {
    const { batches, bottles } = plan(twoPart);
    expect(batches[0]?.parts).toEqual([
      { name: "pyro, part A", volumeMl: 5.8 },
      { name: "pyro, part B", volumeMl: 11.6 },
    ]);
    expect(batches[0]?.stockMl).toBeCloseTo(17.4, 12);
    expect(batches[0]?.waterMl).toBeCloseTo(562.6, 12);
    expect(bottles.slice(0, 2).map((each) => [each.bottle, each.usedMl, each.leftMl])).toEqual([
      ["pyro, part A", 5.8, 19.2],
      ["pyro, part B", 11.6, 88.4],
    ]);
  });

  it("is mixed one part after the other into the water", () => {
    expect(plan(twoPart).steps[0]?.actions[0]?.text).toBe(
      "measure 562.6 mL water, then into it 5.8 mL part A, then 11.6 mL part B, stirring between: pyro (1+2+97, 580 mL), 20.0 °C",
    );
  });

  it("stops when one part is empty, however much is left of the other", () => {
    const short = plan({ ...twoPart, parts: [parts[0], { name: "part B", bottleMl: 20 }] }, 4);
    // The second batch gets one film with 290 mL: 5.8 mL of the 8.4 mL left of part B.
    expect(short.batches.map((each) => [each.films.length, each.runs])).toEqual([
      [2, true],
      [1, true],
      [1, false],
    ]);
    expect(short.batches[2]?.whyNot).toBe("pyro, part B: 2 mL are left and 6 mL are needed");
    expect(short.stock.map((each) => [each.developer, each.shortMl > 0])).toEqual([
      ["pyro, part A", false],
      ["pyro, part B", true],
    ]);
    expect(short.warnings[0]).toBe("roll 4 must wait: 4 mL of pyro, part B are missing");
  });

  it("grows the volume until each part has its least amount for each film", () => {
    const least = [parts[0], { name: "part B", bottleMl: 100, minimumStockMlPerFilm: 6.25 }];
    // 2 films of 6.25 mL at 2 parts in 100.
    expect(plan({ ...twoPart, parts: least }).batches[0]?.volumeMl).toBe(625);
  });

  it("needs no water where the ratio has as many numbers as parts", () => {
    const [batch] = plan({
      ...twoPart,
      dilution: "1+1",
      parts: parts.map((each) => ({ ...each, bottleMl: 300 })),
    }).batches;
    expect(batch).toMatchObject({ stockMl: 580, waterMl: 0 });
  });

  it.each([
    ["one bottle for two concentrates", { parts: undefined, bottleMl: 50 }, "a bottle for each of"],
    ["both ways at once", { bottleMl: 50 }, "bottleMl in each of parts instead"],
    ["one part", { parts: [parts[0]] }, "write a bottle for each"],
    [
      "three parts of two",
      { parts: [...parts, { name: "C", bottleMl: 1 }], dilution: "1+9" },
      "3 concentrates and water",
    ],
    ["two parts of one name", { parts: [parts[0], parts[0]] }, "a different name"],
    [
      "a part without a bottle",
      { parts: [parts[0], { name: "part B" }] },
      "parts[1].bottleMl is missing",
    ],
    ["re-use of the parts", { use: "re-used" }, "of working solution"],
  ])("is refused with %s", (_, more, advice) => {
    expect(() => plan({ ...twoPart, ...more })).toThrow(InputError);
    expect(() => plan({ ...twoPart, ...more })).toThrow(advice);
  });
});
