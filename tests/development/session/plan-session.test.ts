import { describe, expect, it } from "vitest";
import {
  compensateTime,
  factorPerTenDegreesModel,
  planSession,
  type Session,
  sessionLines,
} from "wetside";
import { developer, evening, rolls } from "./session-request.ts";

const step = (session: Session, bath: string, batch = 1) => {
  const found = session.steps.find((each) => each.bath === bath && each.batch === batch);
  if (found === undefined) throw new Error(`no step ${bath}`);
  return found;
};

describe("planSession at 20 °C in a room of 20 °C", () => {
  const session = planSession(evening);

  it("gives the time as printed", () => {
    expect(session.batches[0]?.development?.timeS).toBe(540);
    expect(session.batches[0]?.development?.errorIfUncorrectedPercent).toBeCloseTo(0, 9);
  });

  it("puts the steps in order, each beginning when the one before it ends", () => {
    expect(session.steps.map((each) => each.bath)).toEqual([
      "mix",
      "load",
      "developer",
      "stop",
      "fixer",
      "wash",
      "wetting agent",
      "hang",
    ]);
    session.steps.forEach((each, i) => {
      expect(each.startS).toBe(session.steps[i - 1]?.endS ?? 0);
      expect(each.endS - each.startS).toBe(each.lengthS);
    });
    expect(session.steps.at(-1)?.endS).toBe(session.lengthS);
  });

  it("pours out at the end of the developing time, counted from tank full", () => {
    const development = step(session, "developer");
    const [pourIn] = development.actions;
    const pourOut = development.actions.at(-1);
    // 15 s to fill, 9 minutes, the last 10 s of them pouring out.
    expect((pourOut?.atS ?? 0) - (pourIn?.atS ?? 0)).toBe(15 + 540 - 10);
    expect(development.lengthS).toBe(555);
    expect(pourOut?.text).toContain("pour out developer");
  });

  it("measures half stock and half water for 1+1", () => {
    expect(session.batches[0]).toMatchObject({ volumeMl: 580, stockMl: 290, waterMl: 290 });
    expect(step(session, "mix").actions[0]?.text).toContain(
      "290 mL water, then into it 290 mL stock developer (1+1, 580 mL)",
    );
  });

  it("is plain data that survives JSON, and leaves the request as it was", () => {
    expect(JSON.parse(JSON.stringify(session))).toEqual(session);
    expect(planSession(evening)).toEqual(session);
  });
});

describe("a warm bottle and a cold room", () => {
  const temperatures = { developerC: 22.5, roomC: 15 };
  const model = factorPerTenDegreesModel({ factorPerTenDegrees: 2.4 });
  const developers = [{ ...developer, rateModel: model }];

  it("is timed between the time for the bottle and the time for the reference", () => {
    const { development } = planSession({ ...evening, developers, temperatures }).batches[0] ?? {};
    const bottle = compensateTime({
      timeMin: 9,
      fromTemperatureC: 20,
      toTemperatureC: 22.5,
      model,
    });
    expect(development?.timeS).toBeGreaterThan(bottle.timeMin * 60);
    expect(development?.timeS).toBeLessThan(540);
    expect(development?.startTemperatureC).toBeLessThan(22.5);
    expect(development?.endTemperatureC).toBeLessThan(development?.startTemperatureC ?? 0);
    expect(development?.spanS).toBeNull();
  });

  it("loses less in a water bath, and nothing at once after a pre-wash", () => {
    const of = (more: object) =>
      planSession({ ...evening, developers, temperatures, ...more }).batches[0]?.development;
    const bath = of({ temperatures: { ...temperatures, waterBathC: 22.5 } });
    expect(bath?.endTemperatureC).toBeCloseTo(22.5, 9);
    expect(of({ preWash: true })?.startTemperatureC).toBe(22.5);
  });

  it("shows how far published coefficients spread the time when no table was given", () => {
    const hot = planSession({ ...evening, temperatures: { developerC: 24, roomC: 24 } });
    const [short, long] = hot.batches[0]?.development?.spanS ?? [0, 0];
    // Factors 1.4 and 3 per 10 °C over 4 °C: 540/1.4^0.4 and 540/3^0.4 s.
    expect(long).toBe(Math.round(540 / 1.4 ** 0.4));
    expect(short).toBe(Math.round(540 / 3 ** 0.4));
    expect(hot.assumptions.join()).toContain("no rate model was given");
    expect(hot.warnings.join()).toContain("spread the time by more than 10 %");
  });

  it("warns of the room, of a wash much colder than the developer, and takes the thermometer's error off", () => {
    const session = planSession({
      ...evening,
      temperatures: { ...temperatures, washC: 12, thermometerErrorC: 0.5 },
    });
    const text = session.warnings.join("\n");
    expect(text).toContain("the room is 7.0 °C colder");
    expect(text).toContain("the wash is 10.0 °C colder");
    expect(session.batches[0]?.development?.bottleTemperatureC).toBe(22);
    expect(step(session, "mix").actions[0]?.text).toContain("22.0 °C (the thermometer shows 22.5)");
  });
});

describe("films that differ", () => {
  it("are kept apart by time, and the reason is given", () => {
    const films = [...rolls(1), ...rolls(1, { developmentTimeMin: 11 }, 2)];
    const session = planSession({ ...evening, films });
    expect(session.batches.map((each) => each.films)).toEqual([["roll 1"], ["roll 2"]]);
    expect(session.splits[0]).toContain("poured out at one moment");
  });

  it("are kept apart by developer, and the reason is given", () => {
    const developers = [developer, { ...developer, name: "sharp developer", dilution: "1+50" }];
    const films = [
      ...rolls(1, { developer: "stock developer" }),
      ...rolls(1, { developer: "sharp developer" }, 2),
    ];
    const session = planSession({ ...evening, developers, films });
    expect(session.batches).toHaveLength(2);
    expect(session.splits[0]).toContain("one tank holds one developer");
    expect(session.batches[1]?.stockMl).toBeCloseTo(290 / 51, 9);
  });

  it("may share a tank though their sizes differ, with a warning", () => {
    const films = [...rolls(1), ...rolls(1, { format: "120" }, 2)];
    const session = planSession({ ...evening, films, tank: "plastic, 3 reels" });
    expect(session.batches).toHaveLength(1);
    expect(session.warnings.join()).toContain("spirals of different size");
  });

  it("are fixed three times the clearing time if rich in iodide", () => {
    const films = rolls(1, { modernFilm: true });
    expect(planSession({ ...evening, films }).batches[0]?.fixS).toBe(180);
    expect(planSession(evening).batches[0]?.fixS).toBe(120);
  });
});

describe("several batches", () => {
  it("never overlap, and dry spirals and temper again in between", () => {
    const session = planSession({ ...evening, films: rolls(4) });
    expect(step(session, "turn round", 2).startS).toBe(step(session, "hang", 1).endS);
    expect(step(session, "turn round", 2).actions[0]?.text).toContain("DRY");
    expect(session.drying.map((each) => each.batch)).toEqual([1, 2]);
  });

  it("fix longer as the fixer wears, in a straight line to twice the fresh time", () => {
    const bottles = [{ bath: "fixer", volumeMl: 1000, capacityFilmsPerL: 20 }];
    const session = planSession({ ...evening, films: rolls(6), bottles });
    // Two films of twenty lengthen 60 s by 6 s; twice that for the next batch.
    expect(session.batches.map((each) => each.fixS)).toEqual([120, 132, 144]);
  });

  it("count the films of earlier evenings where the fixer was not tested today", () => {
    const bottles = [{ bath: "fixer", volumeMl: 1000, capacityFilmsPerL: 20, filmsDone: 10 }];
    expect(planSession({ ...evening, bottles }).batches[0]?.fixS).toBe(180);
    const fixer = { clearingTimeFreshS: 60, clearingTimeNowS: 70 };
    expect(planSession({ ...evening, bottles, fixer }).batches[0]?.fixS).toBe(140);
  });

  it("develop longer in a bath used again", () => {
    const again = {
      ...developer,
      dilution: "stock",
      use: "re-used" as const,
      timeIncreasePercentPerFilm: 5,
      filmsDone: 2,
      capacityFilmsPerL: 3,
    };
    const session = planSession({ ...evening, films: rolls(4), developers: [again] });
    const times = session.batches.map((each) => each.development?.timeS);
    expect(times).toEqual([Math.round(540 * 1.1), Math.round(540 * 1.2)]);
    expect(session.bottles[0]).toMatchObject({ filmsBefore: 2, filmsAfter: 6, filmsLeft: 0 });
    expect(session.warnings.join()).toContain("passes its capacity");
  });

  it("cross midnight with the right day on every line", () => {
    const session = planSession({ ...evening, start: "2024-02-28T23:30", films: rolls(4) });
    expect(session.endDayOffset).toBe(1);
    const late = session.steps.find((each) => each.startDayOffset === 1);
    expect(late?.startDateTime?.slice(0, 10)).toBe("2024-02-29");
    expect(sessionLines(session).some((line) => /^00:\d\d:\d\d \+1 {2}/.test(line))).toBe(true);
  });
});

describe("a wash", () => {
  it("by changes leaves less than the published limit", () => {
    const { wash } = planSession(evening).batches[0] ?? {};
    expect(wash?.withinLimit).toBe(true);
  });

  it("by flow runs half an hour, five minutes after a wash aid, unless more is needed", () => {
    const flow = planSession({ ...evening, wash: { by: "flow" } });
    expect(step(flow, "wash").lengthS).toBe(1800);
    const aided = planSession({ ...evening, wash: { by: "flow", aid: true } });
    expect(step(aided, "wash").lengthS).toBe(300);
    expect(step(aided, "rinse").startS).toBe(step(aided, "fixer").endS);
    expect(step(aided, "wash aid").endS).toBe(step(aided, "wash").startS);
  });

  it("takes at least the changes asked for", () => {
    const wash = { by: "changes", changes: 9, minutesEach: 2 } as const;
    expect(planSession({ ...evening, wash }).batches[0]?.wash?.residualGPerM2).toHaveLength(10);
  });
});

describe("what the lines and warnings say", () => {
  it("how much water must flow", () => {
    const flow = planSession({ ...evening, wash: { by: "flow", flowMlPerMin: 1500 } });
    expect(step(flow, "wash").actions[0]?.text).toContain("30 min, at least 1500 mL a minute");
    const unsaid = planSession({ ...evening, wash: { by: "flow" } });
    // Twice the fill of 580 mL a minute where none was given.
    expect(step(unsaid, "wash").actions[0]?.text).toContain("at least 1160 mL a minute");
  });

  it("what a timer shows that was started when the tank was full", () => {
    const { actions, agitationMarks } = step(planSession(evening), "developer");
    expect(actions[0]?.timerS).toBeNull();
    expect(actions.slice(1, -1).map((each) => each.timerS)).toEqual(
      agitationMarks.map((mark) => mark.fromS),
    );
    expect(actions.at(-1)?.timerS).toBe(540 - 10);
  });

  it("a warning that several batches share only once, with their numbers", () => {
    const { fixer, ...untested } = { ...evening, films: rolls(6) };
    const { warnings } = planSession(untested);
    expect(warnings.filter((each) => each.includes("no clearing time"))).toEqual([
      "batches 1, 2, 3: no clearing time was given: 60 s is assumed; clear a scrap and time it",
    ]);
  });

  it("a range left altogether once, where it is left farthest", () => {
    const { warnings } = planSession({ ...evening, temperatures: { developerC: 29, roomC: 30 } });
    const outside = warnings.filter((each) => each.includes("outside the range"));
    expect(outside).toHaveLength(1);
    const hottest = planSession({ ...evening, temperatures: { developerC: 29, roomC: 30 } });
    const endC = hottest.batches[0]?.development?.endTemperatureC ?? 0;
    expect(outside[0]).toContain(`${Number(endC.toPrecision(4))} °C lies`);
  });

  it("a short time in minutes and seconds", () => {
    const films = rolls(1, { developmentTimeMin: 4.75 });
    expect(planSession({ ...evening, films }).warnings.join()).toContain("4:45 is short");
  });

  it("that a water bath is far from the developer", () => {
    const at = (waterBathC: number) =>
      planSession({
        ...evening,
        temperatures: { developerC: 20, roomC: 12, waterBathC },
      }).warnings.join();
    expect(at(20)).not.toContain("water bath");
    expect(at(28)).toContain("the water bath is 8.0 °C warmer than the developer");
  });
});
