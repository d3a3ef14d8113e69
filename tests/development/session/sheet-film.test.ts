import { describe, expect, it } from "vitest";
import { InputError, planSession, type SessionRequest, sessionLines } from "wetside";
import { evening } from "./session-request.ts";

const sheets = (count: number, format = "4x5in-sheet", developmentTimeMin = 9) =>
  Array.from({ length: count }, (_, i) => ({ name: `sheet ${i + 1}`, format, developmentTimeMin }));
const tank = "trays 20x25 cm, 6 sheets";
const plan = (more: Partial<SessionRequest> = {}) =>
  planSession({ ...evening, films: sheets(4), tank, ...more });

describe("sheets in open trays", () => {
  const session = plan();
  const step = (bath: string) => session.steps.find((each) => each.bath === bath);

  it("stay in the dark from loading until the fixer has worked", () => {
    const dark = session.steps.filter((each) => each.dark).map((each) => each.bath);
    expect(dark).toEqual(["load", "pre-wash", "developer", "stop", "fixer"]);
  });

  it("develop for the planned time from the first sheet in to the first sheet out", () => {
    expect(step("developer")?.lengthS).toBe(session.batches[0]?.development?.timeS);
  });

  it("do not leave a short bath before the last sheet is in it", () => {
    // 4 sheets at 10 s and 10 s of draining outlast the stop's 30 s.
    expect(step("stop")?.lengthS).toBe(50);
  });

  it("light the room two minutes after the last sheet came into the fixer, or on leaving it", () => {
    const fixer = plan({ fixer: { clearingTimeFreshS: 120 } }).steps.find(
      (s) => s.bath === "fixer",
    );
    const light = fixer?.actions.find((each) => each.text.startsWith("white light"));
    expect((light?.atS ?? 0) - (fixer?.startS ?? 0)).toBe(30 + 120);
    const short = step("fixer")?.actions.map((each) => each.text) ?? [];
    expect(short.at(-1)).toContain("white light");
  });

  it("take one tray of each bath, four 4x5 counting as one film", () => {
    expect(session.batches[0]).toMatchObject({ volumeMl: 1000, spirals: 1 });
    expect(session.bottles[0]?.filmsAfter).toBeCloseTo(1, 12);
  });

  it("are pre-wetted unless that is turned off, so that they do not stick", () => {
    const dry = plan({ preWash: false });
    expect(dry.steps.map((each) => each.bath)).not.toContain("pre-wash");
  });

  it("go in several loads when there are more than a hand moves", () => {
    expect(plan({ films: sheets(8) }).batches.map((each) => each.films.length)).toEqual([6, 2]);
  });

  it("say nothing of lids, spirals or pouring in", () => {
    const lines = sessionLines(plan({ films: sheets(8) })).join("\n");
    expect(lines).not.toMatch(/\blid|spiral|pour in |invert/);
  });

  it("rock the tray for a single sheet", () => {
    expect(sessionLines(plan({ films: sheets(1) })).join("\n")).toContain("rock the tray");
  });

  it("refuse more sheets than can go in before the first must come out", () => {
    const slow = { films: sheets(6, "4x5in-sheet", 4), handling: { sheetEveryS: 60 } };
    expect(() => plan(slow)).toThrow(InputError);
    expect(() => plan(slow)).toThrow("6 sheets at 60 s each take 370 s");
  });

  it("refuse a scheme of turning a tank, and rolls", () => {
    expect(() => plan({ agitation: "stand" })).toThrow("bottom to top");
    const roll = [{ name: "roll 1", format: "120", developmentTimeMin: 9 }];
    expect(() => plan({ films: roll })).toThrow("a tank with a spiral for 120 roll film");
  });
});

describe("sheets in a closed tank", () => {
  const session = planSession({ ...evening, films: sheets(8), tank: "sheet tank, 6 sheets 4x5" });

  it("load six to a holder, which is dried in between", () => {
    expect(session.batches.map((each) => each.films.length)).toEqual([6, 2]);
    const lines = sessionLines(session).join("\n");
    expect(lines).toContain("DRY the holder");
    expect(lines).toContain("by a corner");
  });

  it("load a sheet in 45 s", () => {
    expect(session.steps.find((each) => each.bath === "load")?.lengthS).toBe(6 * 45);
  });
});
