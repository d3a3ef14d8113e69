import { describe, expect, it } from "vitest";
import { planSession, type SessionBottle } from "wetside";
import { developer, evening, rolls } from "./session-request.ts";

describe("a half-empty bottle", () => {
  const films = rolls(6);
  const developers = [{ ...developer, bottleMl: 700, minimumStockMlPerFilm: 100 }];
  const session = planSession({ ...evening, films, developers });

  it("runs the batches it reaches for and leaves the rest out of the timeline", () => {
    expect(session.batches.map((each) => each.runs)).toEqual([true, true, false]);
    expect(Math.max(...session.steps.map((each) => each.batch))).toBe(2);
    expect(session.batches[2]?.whyNot).toBe(
      "stock developer: 120 mL are left and 290 mL are needed",
    );
    expect(session.batches[2]?.development).toBeNull();
  });

  it("says how short it is, which films wait and what to do", () => {
    const [stock] = session.stock;
    expect(stock).toMatchObject({
      neededMl: 870,
      shortMl: 170,
      batchesPlanned: 3,
      batchesReached: 2,
      filmsReached: 4,
      filmsWaiting: ["roll 5", "roll 6"],
    });
    expect(stock?.instead.join("\n")).toContain("170 mL more");
    // 1740 mL of working solution from 700 mL: 1 + 1.4857, rounded up.
    expect(stock?.instead.join("\n")).toContain("dilute to 1+1.5");
  });

  it("accounts for every millilitre", () => {
    expect(session.bottles[0]).toMatchObject({ beforeMl: 700, usedMl: 580, leftMl: 120 });
  });

  it("runs a smaller batch rather than none", () => {
    const one = planSession({ ...evening, films, developers: [{ ...developer, bottleMl: 450 }] });
    expect(one.batches.map((each) => [each.films.length, each.runs])).toEqual([
      [2, true],
      [1, true],
      [1, false],
      [2, false],
    ]);
    expect(one.stock[0]).toMatchObject({ batchesPlanned: 3, filmsReached: 3 });
  });

  it("forbids a weaker dilution where a film would get too little", () => {
    const little = [{ ...developer, bottleMl: 700, minimumStockMlPerFilm: 140 }];
    const { stock } = planSession({ ...evening, films, developers: little });
    expect(stock[0]?.instead.join()).toContain("do not dilute further: 840 mL are the least");
  });

  it("runs nothing when the bottle is empty", () => {
    const none = planSession({ ...evening, developers: [{ ...developer, bottleMl: 0 }] });
    expect(none.steps).toEqual([]);
    expect(none.lengthS).toBe(0);
    expect(none.bottles[0]?.leftMl).toBe(0);
  });
});

describe("the least stock for one film", () => {
  it("makes more working solution than covers the spirals", () => {
    const developers = [
      { ...developer, dilution: "1+50", bottleMl: 100, minimumStockMlPerFilm: 6.25 },
    ];
    const { batches } = planSession({ ...evening, developers });
    // 6.25 mL in 1+50 is 318.75 mL a film, 637.5 mL for two: still within 650 mL.
    expect(batches[0]?.volumeMl).toBe(638);
    expect(batches[0]?.stockMl).toBeCloseTo(638 / 51, 12);
  });

  it("takes films out of the tank where it would overflow", () => {
    const developers = [
      { ...developer, dilution: "1+50", bottleMl: 100, minimumStockMlPerFilm: 7 },
    ];
    const { batches } = planSession({ ...evening, developers });
    expect(batches.map((each) => each.films.length)).toEqual([1, 1]);
    expect(batches[0]?.volumeMl).toBe(357);
  });
});

describe("what is left in the bottles", () => {
  const bottles = [
    { bath: "fixer", volumeMl: 1000, filmsDone: 18 },
    { bath: "stop", volumeMl: 500, capacityFilmsPerL: 15 },
    { bath: "wetting agent", volumeMl: 700, oneShot: true },
    { bath: "wash aid", volumeMl: 1000 },
  ];
  const session = planSession({ ...evening, bottles });
  const left = (name: string) => session.bottles.find((each) => each.bottle === name);

  it("loses to a bath that goes back only what film and tank carry out", () => {
    // 70 mL/m² on two films of 0.0567 m², and 6 mL in the tank.
    expect(left("fixer")?.usedMl).toBeCloseTo(70 * 0.1134 + 6, 9);
    expect(left("fixer")).toMatchObject({ filmsAfter: 20, filmsLeft: 0 });
    expect(left("fixer")?.advice).toContain("used up");
  });

  it("pours a one-shot bath away and leaves an unused one alone", () => {
    expect(left("wetting agent")).toMatchObject({ usedMl: 580, leftMl: 120 });
    expect(left("wash aid")).toMatchObject({ usedMl: 0, filmsAfter: 0 });
  });

  it("warns of a bottle that does not cover the films and of the fixer's end", () => {
    expect(session.warnings.join("\n")).toContain("stop: 500 mL do not cover the films");
    expect(session.warnings.join("\n")).toContain("fixer reaches or passes its capacity");
  });

  it("warns of what is out of date on the day of the session", () => {
    const old = [{ bath: "fixer", volumeMl: 1000, expiresOn: "2025-01-31" }];
    const on = (start: string) => planSession({ ...evening, start, bottles: old }).warnings.join();
    expect(on("2025-02-01T19:00")).toContain("fixer expired on 2025-01-31");
    expect(on("2025-01-31T19:00")).not.toContain("expired");
    expect(on("19:00")).toContain("check it against today's date");
  });
});

describe("bottles that do not last the evening", () => {
  const of = (bottles: readonly SessionBottle[], more = {}) =>
    planSession({ ...evening, films: rolls(6), bottles, ...more }).warnings.join("\n");

  it("are warned of when a one-shot bath runs out after the first batch", () => {
    // Three batches of 580 mL from 1000 mL.
    expect(of([{ bath: "wetting agent", volumeMl: 1000, oneShot: true }])).toContain(
      "wetting agent: 420 mL are left for batch 2, which needs 580 mL; have 740 mL more ready for tonight",
    );
    expect(of([{ bath: "wetting agent", volumeMl: 1740, oneShot: true }])).not.toContain("wetting");
  });

  it("are warned of when what each batch carries out no longer covers the films", () => {
    // Two films carry 7.9 mL and the tank keeps 6: 13.9 mL a batch.
    expect(of([{ bath: "fixer", volumeMl: 600, capacityFilmsPerL: 40 }])).toContain(
      "fixer: each batch carries some of it out, 572 mL are left for batch 3, which needs 580 mL; top it up with 8 mL of fresh",
    );
    expect(of([{ bath: "fixer", volumeMl: 610, capacityFilmsPerL: 40 }])).not.toContain("top it");
  });

  it("count a developer that is used again among them", () => {
    const again = { ...developer, dilution: "stock", use: "re-used" as const, bottleMl: 600 };
    expect(of([], { developers: [again] })).toContain("stock developer: each batch carries some");
  });

  it("say nothing of a bath that is not used tonight", () => {
    const bottles = [
      { bath: "stop", volumeMl: 100 },
      { bath: "wash aid", volumeMl: 100 },
    ];
    expect(of(bottles, { stop: "water" })).not.toMatch(/stop:|wash aid:/);
    expect(of(bottles, { wash: { by: "changes", aid: true } })).toMatch(
      /stop: 100[\s\S]*wash aid: 100/,
    );
  });
});
