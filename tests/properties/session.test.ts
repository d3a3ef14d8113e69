import { describe, expect, it } from "vitest";
import {
  developingTank,
  InputError,
  planSession,
  type SessionRequest,
  sessionLines,
} from "wetside";
import fc from "./fast-check.ts";

/** Sums of a few hundred doubles of the order of 1000. */
const ROUNDING_ML = 1e-6;

const film = (name: string) =>
  fc.record({
    name: fc.constant(name),
    format: fc.constantFrom("135-36", "135-24", "120"),
    developmentTimeMin: fc.constantFrom(7, 9.75, 13),
    developer: fc.constantFrom("a", "b"),
    modernFilm: fc.boolean(),
  });

const developer = (name: string) =>
  fc.record({
    name: fc.constant(name),
    dilution: fc.constantFrom("stock", "1+1", "1+9", "1+50"),
    use: fc.constantFrom("one-shot" as const, "re-used" as const),
    bottleMl: fc.integer({ min: 0, max: 3000 }),
    minimumStockMlPerFilm: fc.constantFrom(0, 3, 6),
  });

const request: fc.Arbitrary<SessionRequest> = fc.record({
  start: fc.tuple(fc.nat(23), fc.nat(59)).map(([h, m]) => `${h}:${String(m).padStart(2, "0")}`),
  films: fc
    .integer({ min: 1, max: 7 })
    .chain((n) => fc.tuple(...Array.from({ length: n }, (_, i) => film(`roll ${i + 1}`)))),
  tank: fc.constantFrom("plastic, 2 reels", "plastic, 3 reels", "steel, 4 reels"),
  developers: fc.tuple(developer("a"), developer("b")),
  temperatures: fc.record({
    developerC: fc.double({ min: 17, max: 25, noNaN: true }),
    roomC: fc.double({ min: 12, max: 30, noNaN: true }),
    washC: fc.double({ min: 5, max: 25, noNaN: true }),
  }),
  preWash: fc.boolean(),
  fixer: fc.record({ clearingTimeFreshS: fc.integer({ min: 20, max: 200 }) }),
  wash: fc.record({ by: fc.constantFrom("changes" as const, "flow" as const), aid: fc.boolean() }),
  bottles: fc.constant([
    { bath: "fixer", volumeMl: 1000 },
    { bath: "wetting agent", volumeMl: 1500, oneShot: true },
  ]),
});

const all = (check: (given: SessionRequest) => void) =>
  fc.assert(fc.property(request, check), { numRuns: 150 });

describe("any session that can be planned", () => {
  it("has a timeline without gap or overlap that sums to its length", () => {
    all((given) => {
      const { steps, lengthS } = planSession(given);
      steps.forEach((step, i) => {
        expect(step.startS).toBe(steps[i - 1]?.endS ?? 0);
        expect(step.lengthS).toBeGreaterThan(0);
        for (const { atS } of step.actions) {
          expect(atS).toBeGreaterThanOrEqual(step.startS);
          expect(atS).toBeLessThanOrEqual(step.endS);
        }
      });
      expect(steps.reduce((sum, step) => sum + step.lengthS, 0)).toBe(lengthS);
    });
  });

  it("never fills a tank above its brim or leaves a spiral dry", () => {
    all((given) => {
      const tank = developingTank(given.tank);
      for (const batch of planSession(given).batches) {
        const cover = batch.formats.reduce((sum, format) => {
          const spiral = tank.spirals.find((each) => each.formats.includes(format));
          return sum + (spiral?.coverMl ?? Number.NaN);
        }, 0);
        expect(batch.volumeMl).toBeLessThanOrEqual(tank.fullMl);
        expect(batch.volumeMl).toBeGreaterThanOrEqual(cover);
        expect(batch.stockMl + batch.waterMl).toBeCloseTo(batch.volumeMl, 9);
      }
    });
  });

  it("puts each film into one batch, and only films of one time and developer together", () => {
    all((given) => {
      const { batches } = planSession(given);
      const names = batches.flatMap((batch) => batch.films);
      expect([...names].sort()).toEqual(given.films.map((each) => each.name).sort());
      for (const batch of batches) {
        const members = given.films.filter((each) => batch.films.includes(each.name));
        expect(new Set(members.map((each) => each.developmentTimeMin)).size).toBe(1);
        expect(new Set(members.map((each) => each.developer)).size).toBe(1);
      }
    });
  });

  it("accounts for every millilitre of every bottle", () => {
    all((given) => {
      const { bottles, batches } = planSession(given);
      for (const { beforeMl, usedMl, leftMl } of bottles) {
        expect(Math.abs(usedMl + leftMl - beforeMl)).toBeLessThan(ROUNDING_ML);
        expect(leftMl).toBeGreaterThanOrEqual(0);
      }
      for (const each of given.developers ?? []) {
        if (each.use !== "one-shot") continue;
        const poured = batches
          .filter((batch) => batch.runs && batch.developer === each.name)
          .reduce((sum, batch) => sum + batch.stockMl, 0);
        const left = bottles.find((bottle) => bottle.bottle === each.name)?.leftMl ?? Number.NaN;
        expect(Math.abs(poured + left - (each.bottleMl ?? 0))).toBeLessThan(ROUNDING_ML);
      }
    });
  });

  it("washes every batch below the published limit", () => {
    all((given) => {
      for (const batch of planSession(given).batches) {
        if (batch.runs) expect(batch.wash?.withinLimit).toBe(true);
      }
    });
  });

  it("is plain data without a number that is not finite, and so are its lines", () => {
    all((given) => {
      const session = planSession(given);
      expect(JSON.parse(JSON.stringify(session))).toEqual(session);
      expect(sessionLines(session).join("\n")).not.toMatch(/NaN|Infinity|undefined/);
    });
  });

  it("is the same when planned again from the same, unchanged request", () => {
    all((given) => {
      const before = JSON.stringify(given);
      expect(planSession(given)).toEqual(planSession(given));
      expect(JSON.stringify(given)).toBe(before);
    });
  });
});

describe("any colour session", () => {
  const colour = fc.record({
    process: fc.constantFrom("colour negative" as const, "colour reversal" as const),
    start: fc.constantFrom("23:50", "2024-12-31T22:10"),
    films: fc
      .array(
        fc.record({
          format: fc.constantFrom("135-36", "120"),
          pushStops: fc.constantFrom(-1, 0, 1, 2),
        }),
        { minLength: 1, maxLength: 6 },
      )
      .map((films) => films.map((each, i) => ({ ...each, name: `roll ${i}` }))),
    tank: fc.constant("plastic, 3 reels"),
    wash: fc.constantFrom({ by: "changes" as const }, { by: "flow" as const }),
    handling: fc.record({
      pourInS: fc.integer({ min: 0, max: 120 }),
      pourOutS: fc.integer({ min: 0, max: 60 }),
    }),
    temperatures: fc.record({
      developerC: fc.double({ min: 36, max: 40, noNaN: true }),
      roomC: fc.double({ min: 15, max: 30, noNaN: true }),
    }),
    bottles: fc
      .integer({ min: 0, max: 1500 })
      .chain((volumeMl) =>
        fc.boolean().map((oneShot) => [{ bath: "developer", volumeMl, oneShot }]),
      ),
  });

  it("has a timeline that sums up, films that are all placed and bottles that add up", () => {
    fc.assert(
      fc.property(colour, (given) => {
        const { steps, lengthS, batches, bottles } = planSession(given);
        expect(steps.reduce((sum, step) => sum + step.lengthS, 0)).toBe(lengthS);
        expect(steps.every((step, i) => step.startS === (steps[i - 1]?.endS ?? 0))).toBe(true);
        for (const { actions, startS, endS } of steps) {
          const moments = [startS, ...actions.map((each) => each.atS), endS];
          expect(moments).toEqual([...moments].sort((a, b) => a - b));
        }
        expect(batches.flatMap((batch) => batch.films).sort()).toEqual(
          given.films.map((each) => each.name).sort(),
        );
        for (const { beforeMl, usedMl, leftMl } of bottles) {
          expect(Math.abs(usedMl + leftMl - beforeMl)).toBeLessThan(ROUNDING_ML);
        }
      }),
      { numRuns: 80 },
    );
  });
});

describe("a hotter developer", () => {
  it("is never poured out later", () => {
    fc.assert(
      fc.property(request, fc.double({ min: 0.01, max: 3, noNaN: true }), (given, warmer) => {
        const { temperatures } = given;
        const hotter = { ...temperatures, developerC: temperatures.developerC + warmer };
        const times = (each: SessionRequest) =>
          planSession(each).batches.map((batch) => batch.development?.timeS ?? 0);
        const cool = times(given);
        times({ ...given, temperatures: hotter }).forEach((timeS, i) => {
          expect(timeS).toBeLessThanOrEqual(cool[i] ?? 0);
        });
      }),
      { numRuns: 60 },
    );
  });
});

describe("a session with broken numbers", () => {
  it("is refused with advice, never planned with them", () => {
    const broken = fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -5, "20", null);
    fc.assert(
      fc.property(request, broken, (given, value) => {
        const first = { ...given.films[0], developmentTimeMin: value };
        const films = [first, ...given.films.slice(1)];
        expect(() => planSession({ ...given, films } as never)).toThrow(InputError);
        const temperatures = { ...given.temperatures, developerC: value };
        expect(() => planSession({ ...given, temperatures } as never)).toThrow(InputError);
      }),
      { numRuns: 40 },
    );
  });
});
