import { describe, expect, it } from "vitest";
import { planSession, type SessionRequest, washByChanges } from "../../lib/development/index.ts";
import {
  sessionActionTable,
  sessionBatchTable,
  sessionBottleTable,
  sessionDevelopmentTable,
  sessionSheet,
  sessionTimeline,
  washResidualFigure,
} from "../../lib/figures/index.ts";
import { InputError } from "../../lib/input/index.ts";
import { drawn } from "./drawn.ts";

const request: SessionRequest = {
  start: "22:30",
  films: [1, 2, 3, 4, 5, 6].map((i) => ({
    name: `roll ${i}`,
    format: "135-36",
    developmentTimeMin: i > 4 ? 12.5 : 9.75,
  })),
  tank: "plastic, 2 reels",
  developers: [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 1000 }],
  temperatures: { developerC: 22.5, roomC: 15, fixerC: 20, washC: 16 },
  fixer: { clearingTimeFreshS: 50 },
  bottles: [{ bath: "fixer", volumeMl: 1000 }],
};
const session = planSession(request);
const short = planSession({
  ...request,
  developers: [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 100 }],
});
/** A phone's width over the smallest letter that can be read, as drawn: 360 px, 8 px of 11.5. */
const WIDEST_PX = (360 * 11.5) / 8;

const textOf = (value: object) => {
  const display = (value as unknown as Record<symbol, () => Record<string, string>>)[
    Symbol.for("Jupyter.display")
  ];
  return display?.()["text/plain"] ?? "";
};

describe("sessionTimeline", () => {
  it("draws without a warning, narrow enough for a telephone, three batches on one sheet", async () => {
    const { warnings, svg, width, height } = await drawn(sessionTimeline(session));
    expect(warnings).toEqual([]);
    expect(svg).not.toMatch(/NaN|undefined/);
    expect(width).toBeLessThan(WIDEST_PX);
    // A4 upright, in the same proportion as the page's print style leaves it.
    expect(height / width).toBeLessThan(267 / 120);
  });

  it("names every step with its clock, and when to pour the developer out", async () => {
    const { svg } = await drawn(sessionTimeline(session));
    for (const step of session.steps) expect(svg).toContain(`>${step.startClock}`);
    const developer = session.steps.find((step) => step.bath === "developer");
    expect(svg).toContain(`out ${developer?.actions.at(-1)?.clock}`);
    expect(svg).toContain("Batch 3: roll 5, roll 6");
  });

  it("says start, end and developing times in its text alternative", () => {
    const { description } = sessionTimeline(session);
    expect(description).toContain(`from 22:30:00 to ${session.endClock}`);
    expect(description.match(/develops for/g)).toHaveLength(3);
  });

  it("draws a colour session too", async () => {
    const colour = planSession({
      start: "14:00",
      process: "colour reversal",
      films: [{ name: "a", format: "120" }],
      tank: "plastic, 2 reels",
      temperatures: { developerC: 38, roomC: 20, waterBathC: 38 },
    });
    expect((await drawn(sessionTimeline(colour))).warnings).toEqual([]);
  });

  it("refuses a session in which nothing runs, and widths that cannot be read", () => {
    expect(() => sessionTimeline(short)).toThrow("at least one batch runs");
    expect(() => sessionTimeline(session, { plotWidth: 50 })).toThrow(InputError);
  });
});

describe("sessionSheet", () => {
  it("holds every step of every batch once, and the moment to pour the developer out", () => {
    const rows = sessionSheet(session).rows;
    const out = rows.find((row) => row.step === "POUR DEVELOPER OUT");
    const developers = session.steps.filter((step) => step.bath === "developer");
    expect(out?.batch1).toBe(developers[0]?.actions.at(-1)?.clock);
    const beside = ["POUR DEVELOPER OUT", "lid may come off", "films", "stock + water (mL)", "dry"];
    const others = rows.filter((row) => !beside.includes(String(row.step)));
    const cells = others.flatMap((row) =>
      [1, 2, 3].map((batch) => row[`batch${batch}`]).filter((cell) => cell !== undefined),
    );
    expect(cells).toHaveLength(session.steps.length);
    for (const step of session.steps) {
      expect(cells.some((cell) => String(cell).startsWith(step.startClock))).toBe(true);
    }
  });

  it("marks the next day and fits the width of a sheet as text", () => {
    const text = textOf(sessionSheet(session));
    expect(text).toContain("+1");
    // 150 characters of a fixed-width letter fit A4 across at 8 points.
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(150);
  });

  it("writes the fill of each batch where they differ", () => {
    const films = request.films.slice(0, 3);
    const rows = sessionSheet(planSession({ ...request, films })).rows;
    expect(rows.find((row) => row.step === "developer")?.volume).toBe("580 / 290");
  });
});

describe("the other rows of the sheet", () => {
  const row = (of: typeof session, step: string) =>
    sessionSheet(of).rows.find((each) => each.step === step);

  it("say what to measure, when light may come in and when the films are dry", () => {
    expect(row(session, "films")?.batch3).toBe("roll 5, roll 6");
    expect(row(session, "stock + water (mL)")?.batch1).toBe("290 + 290");
    const lid = session.steps
      .flatMap((step) => step.actions)
      .find((action) => action.text.includes("lid may come off"));
    expect(row(session, "lid may come off")?.batch1).toBe(lid?.clock);
    expect(row(session, "dry")?.batch3).toBe(`${session.drying[2]?.readyClock} +1`);
  });

  it("tell the first developer from the colour developer", () => {
    const { developers, fixer, bottles, ...rest } = request;
    const colour = planSession({
      ...rest,
      process: "colour reversal",
      films: [{ name: "a", format: "135-36" }],
      temperatures: { developerC: 38, roomC: 20, waterBathC: 38 },
    });
    expect(row(colour, "first developer")).toBeDefined();
    expect(row(colour, "developer")).toBeUndefined();
    expect(row(colour, "developer (mL)")?.batch1).toBe("290");
    expect(row(colour, "first developer")?.temperature).toBe("38.0 ± 0.3");
    expect(row(session, "developer")?.temperature).toBe("22.5");
  });

  it("do not let light in before the last sheet has left the fixer", () => {
    const { fixer, ...rest } = request;
    const sheets = (count: number, clearingTimeFreshS: number) =>
      planSession({
        ...rest,
        films: Array.from({ length: count }, (_, i) => ({
          name: `sheet ${i + 1}`,
          format: "4x5in-sheet",
          developmentTimeMin: 9.75,
        })),
        tank: "trays 20x25 cm, 6 sheets",
        fixer: { clearingTimeFreshS },
      });
    // Six sheets in a fixer of 100 s: the last goes in at 50 s and has its two minutes outside.
    expect(row(sheets(6, 50), "light may go on")?.batch1).toBe("last sheet out");
    // One sheet in a fixer of five minutes: two minutes are enough.
    const long = sheets(1, 150);
    const start = long.steps.find((step) => step.bath === "fixer")?.startClock ?? "";
    expect(String(row(long, "light may go on")?.batch1) > start).toBe(true);
  });

  it("are the first columns, so that a telephone shows the clocks without scrolling", () => {
    const fields = sessionSheet(session).columns.map((column) => column.field);
    expect(fields.slice(0, 4)).toEqual(["step", "batch1", "batch2", "batch3"]);
  });
});

describe("sessionActionTable", () => {
  const { rows, caption } = sessionActionTable(session, { batch: 2 });
  const actions = session.steps.filter((s) => s.batch === 2).flatMap((s) => s.actions);
  const bout = (text: unknown) => String(text).startsWith("agitate");

  it("has every action of its batch in order, with the timer from tank full", () => {
    expect(caption).toBe("Batch 2: roll 3, roll 4");
    const texts = rows.slice(0, -1).map((each) => each.text);
    expect(texts.filter((text) => !bout(text))).toEqual(
      actions.map((each) => each.text).filter((text) => !bout(text)),
    );
    expect(rows.at(-1)).toMatchObject({ timer: null, text: "roll 3, roll 4 should be dry" });
    expect(rows.find((each) => String(each.text).startsWith("tank full"))?.timer).toBe("0:00");
  });

  it("says equal bouts at equal distances in one row, from the first to the last", () => {
    const step = session.steps.find((s) => s.bath === "developer" && s.batch === 2);
    const last = step?.agitationMarks.at(-1)?.fromS ?? 0;
    const row = rows.find((each) => bout(each.text));
    expect(row).toMatchObject({
      timer: "1:00",
      text: `agitate 5 s, then every 1:00 until ${last / 60}:00`,
    });
    expect(row?.what).toBe(`1:00 · ${row?.text}`);
    expect(row?.clock).toBe(step?.actions.find((each) => bout(each.text))?.clock);
    // Two bouts alone stay as they are: 2:30 in the fixer has them at 1:00 and 2:00.
    const fixer = { clearingTimeFreshS: 75 };
    const two = sessionActionTable(planSession({ ...request, fixer })).rows;
    expect(two.filter((each) => each.text === "agitate 10 s").map((each) => each.timer)).toEqual([
      "1:00",
      "2:00",
    ]);
  });

  it("fits one printed sheet", () => {
    // About 40 rows go on A4 as the page prints them.
    expect(rows.length).toBeLessThanOrEqual(36);
  });

  it("refuses a batch that is not in the timeline", () => {
    expect(() => sessionActionTable(session, { batch: 4 })).toThrow("write one of 1, 2, 3");
    expect(() => sessionActionTable(short)).toThrow("no batch runs");
    expect(() => sessionActionTable(session, { batch: 1.5 })).toThrow(InputError);
  });
});

describe("the tables of batches, development and bottles", () => {
  it("show what to measure, and why a batch does not run", () => {
    expect(sessionBatchTable(session).rows[0]).toMatchObject({
      stock: "290.0",
      waterMl: 290,
      runs: "yes",
    });
    expect(sessionBatchTable(short).rows[0]?.runs).toContain("no: developer: 100 mL are left");
  });

  it("show the error of a time that was not corrected, for batches that run", () => {
    const { rows } = sessionDevelopmentTable(session);
    expect(rows).toHaveLength(3);
    const { development } = session.batches[0] ?? {};
    expect(rows[0]?.uncorrectedPercent).toBe(development?.errorIfUncorrectedPercent);
    expect(rows[0]?.given).toBe("9:45 at 20 °C");
    expect(sessionDevelopmentTable(short).rows).toEqual([]);
  });

  it("show what is left", () => {
    expect(sessionBottleTable(session).rows.map((row) => row.bottle)).toEqual([
      "developer",
      "fixer",
    ]);
    expect(textOf(sessionBottleTable(session))).toContain("130");
  });
});

describe("washResidualFigure", () => {
  const wash = washByChanges({ areaM2: 0.1134, waterMl: 580 }, [3, 3, 3, 3, 3]);

  it("draws without a warning and says when the limit is reached", async () => {
    const figure = washResidualFigure(wash);
    expect((await drawn(figure)).warnings).toEqual([]);
    expect(figure.description).toContain("below the limit after 4 changes");
  });

  it("says so where the limit is not reached, and refuses a wash without changes", () => {
    const little = washByChanges({ areaM2: 0.1134, waterMl: 580 }, [1]);
    expect(washResidualFigure(little).description).toContain("does not reach the limit");
    const none = { ...wash, residualGPerM2: [8] };
    expect(() => washResidualFigure(none)).toThrow(InputError);
  });
});
