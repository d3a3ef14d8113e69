import { describe, expect, it } from "vitest";
import {
  formatProductionLog,
  formatPumpLog,
  formatRemakesLog,
  formatStripBatchRegister,
  formatStripLog,
  formatTemperatureLog,
  type ParsedLog,
  parseProductionLog,
  parsePumpLog,
  parseRemakesLog,
  parseStripBatchRegister,
  parseStripLog,
  parseTemperatureLog,
  problemMessage,
  requireCleanLog,
} from "wetside/records";
import fc from "./fast-check.ts";

const file = "log.csv";
const START = Date.UTC(2000, 0, 1);
const MINUTE = 60_000;
const DAY_MINUTES = 1440;

const minuteText = (minutes: number) =>
  new Date(START + minutes * MINUTE).toISOString().slice(0, 16);
const dayText = (days: number) => minuteText(days * DAY_MINUTES).slice(0, 10);

/** Rising, all different. */
const rising = fc
  .uniqueArray(fc.nat(20_000_000), { maxLength: 25 })
  .map((values) => [...values].sort((a, b) => a - b));
const density = fc.double({ min: 0, max: 4.5, noNaN: true }).map((value) => value + 0);
const densities = fc.record({ red: density, green: density, blue: density });
/** Words as people write them, quotation marks, commas and all; no blanks at the ends. */
const word = fc
  .string({ minLength: 1, maxLength: 12 })
  .map((text) => text.replace(/[\r\n\ufffd\0]/g, "x").trim())
  .filter((text) => text !== "");
const patchName = fc.constantFrom("dMin", "ld", "hd", "dMax", "retainedSilver", "grey_1", "step21");

const bare = <Row extends { readonly source?: unknown }>(log: ParsedLog<Row>) =>
  requireCleanLog(log).map(({ source, ...row }) => row);

describe("what is written is read back", () => {
  it("strips", () => {
    const strips = fc
      .tuple(rising, fc.uniqueArray(patchName, { minLength: 1 }))
      .chain(([times, patches]) =>
        fc.tuple(
          ...times.map((time) =>
            fc.record({
              takenAt: fc.constant(minuteText(time)),
              process: fc.constantFrom("colour-negative", "colour-paper"),
              stripBatch: word,
              operator: word,
              patches: fc
                .tuple(...patches.map(() => densities))
                .map((all) => Object.fromEntries(patches.map((patch, i) => [patch, all[i]]))),
            }),
          ),
        ),
      )
      .filter((all) => all.length > 0);
    fc.assert(
      fc.property(strips, (all) => {
        const given = all as Parameters<typeof formatStripLog>[0];
        expect(bare(parseStripLog(formatStripLog(given), { file }))).toEqual(given);
      }),
    );
  });

  it("strip batches", () => {
    const batch = fc.record({
      process: fc.constantFrom("colour-negative", "colour-paper"),
      reference: fc.dictionary(patchName, densities),
      correction: fc.dictionary(
        patchName,
        densities.map(({ red, green, blue }) => ({
          red: red / 10,
          green: -green / 10 + 0,
          blue: blue / 10,
        })),
      ),
    });
    const batches = fc
      .array(batch, { minLength: 1, maxLength: 6 })
      .filter((all) => all.some((each) => Object.keys(each.reference).length > 0))
      .map((all) => all.map((each, i) => ({ id: `B-${i}`, ...each })));
    fc.assert(
      fc.property(batches, (all) => {
        const names = new Set(
          all.flatMap((b) => [...Object.keys(b.reference), ...Object.keys(b.correction)]),
        );
        fc.pre(names.size > 0);
        const log = parseStripBatchRegister(formatStripBatchRegister(all), { file });
        expect(requireCleanLog(log)).toEqual(
          all.map((each) => ({
            ...each,
            reference: { ...each.reference },
            correction: { ...each.correction },
          })),
        );
      }),
    );
  });

  it("production, pumps, temperatures and remakes", () => {
    const count = fc.nat(1_000_000);
    fc.assert(
      fc.property(
        rising,
        fc.func(count),
        fc.array(word, { minLength: 1 }),
        (times, draw, words) => {
          fc.pre(times.length > 0);
          const word = (i: number) => words[i % words.length] ?? "x";
          const production = times.map((time, i) => ({
            date: dayText(time % 20_000),
            process: "colour-paper",
            format: `${word(i)} ${i}`,
            count: draw("count", i),
          }));
          const byDay = production.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
          expect(bare(parseProductionLog(formatProductionLog(byDay), { file }))).toEqual(byDay);

          let counter = 0;
          const pumps = times.map((time, i) => {
            const counterReset = draw("reset", i) % 5 === 0;
            counter = (counterReset ? 0 : counter) + draw("strokes", i);
            return {
              readAt: minuteText(time),
              pump: word(0),
              counterStrokes: counter,
              settingMlPerStroke: draw("setting", i) / 1000,
              counterReset,
              ...(draw("delivered?", i) % 2 ? { deliveredMl: draw("delivered", i) / 7 } : {}),
              ...(draw("cylinder?", i) % 3
                ? {}
                : { cylinder: { strokes: i + 1, volumeMl: i / 3 } }),
            };
          });
          expect(bare(parsePumpLog(formatPumpLog(pumps), { file }))).toEqual(pumps);

          const temperatures = times.map((time, i) => ({
            readAt: minuteText(time),
            bath: word(i),
            instrument: "controller",
            temperatureC: (draw("temperature", i) % 600) / 10,
          }));
          expect(bare(parseTemperatureLog(formatTemperatureLog(temperatures), { file }))).toEqual(
            temperatures,
          );

          const days = [...new Set(times.map((time) => dayText(time % 20_000)))].sort();
          const remakes = days.map((date, i) => ({
            date,
            printsMade: 2_000_000 + i,
            remade: { tooBright: draw("bright", i), unsharp: draw("unsharp", i) },
          }));
          expect(bare(parseRemakesLog(formatRemakesLog(remakes), { file }))).toEqual(remakes);
        },
      ),
    );
  });
});

describe("good rows survive bad ones", () => {
  const BAD = [
    "2026-02-30,colour-paper,10x15cm,1",
    "2026-08-14,colour-papier,10x15cm,1",
    "2026-08-14,colour-paper,,1",
    '2026-08-14,colour-paper,10x15cm,"1,5"',
    "2026-08-14,colour-paper,10x15cm",
    '2026-08-14,colour-paper,"10x15cm,1',
    '2026-08-14,"colour"-paper,10x15cm,1',
    "1,2,3,4,5,6",
  ];
  const lines = fc.array(
    fc.oneof(
      { weight: 3, arbitrary: fc.constant("good") },
      { weight: 2, arbitrary: fc.constantFrom(...BAD) },
      { weight: 1, arbitrary: fc.constantFrom("", "   ", ",,,") },
    ),
    { minLength: 1, maxLength: 40 },
  );
  const separators = fc.constantFrom("\n", "\r\n", "\r");

  it("each of them, in order; every bad row has its line among the problems; nothing is lost", () => {
    fc.assert(
      fc.property(lines, separators, fc.boolean(), (kinds, end, mark) => {
        const written = kinds.map((kind, i) =>
          kind === "good" ? `${dayText(i)},colour-paper,10x15cm,${i}` : kind,
        );
        const text = `${mark ? "\ufeff" : ""}${["date,process,format,count", ...written].join(end)}${end}`;
        const log = parseProductionLog(text, { file });
        const good = kinds.flatMap((kind, i) => (kind === "good" ? [i] : []));
        const bad = kinds.flatMap((kind, i) => (BAD.includes(kind) ? [i + 2] : []));
        expect(log.rows.map((row) => row.count)).toEqual(good);
        expect(log.rows.map((row) => row.source?.line)).toEqual(good.map((i) => i + 2));
        const refusedLines = new Set(log.problems.filter((p) => !p.rowUsed).map((p) => p.line));
        if (good.length + bad.length > 0) expect([...refusedLines]).toEqual(bad);
        expect(log.rowsRead).toBe(good.length + bad.length);
        expect(log.rows.length + log.rowsRefused).toBe(log.rowsRead);
      }),
    );
  });

  it("in any order of rows, and come out sorted by time", () => {
    const days = fc.uniqueArray(fc.nat(9000), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(days, (order) => {
        const rows = order.map((day) => `${dayText(day)},colour-paper,10x15cm,${day}`);
        const log = parseProductionLog(["date,process,format,count", ...rows].join("\n"), { file });
        expect(log.rows.map((row) => row.count)).toEqual([...order].sort((a, b) => a - b));
        const descents = order.filter((day, i) => day < (order[i - 1] ?? -1)).length;
        expect(log.problems).toHaveLength(descents);
        expect(log.warnings).toHaveLength(descents > 0 ? 1 : 0);
      }),
    );
  });
});

describe("any text at all", () => {
  it("is read or complained of, never thrown on", () => {
    const pieces = fc.constantFrom(
      "date,process,format,count",
      "2026-08-14,colour-paper,10x15cm,9",
      '"',
      ",",
      ";",
      "\t",
      "\n",
      "\r\n",
      "PK",
      "0,5",
      "\0",
      "sep=;\n",
    );
    const text = fc
      .array(fc.oneof(pieces, fc.string()), { maxLength: 30 })
      .map((all) => all.join(""));
    fc.assert(
      fc.property(text, (input) => {
        const log = parseProductionLog(input, { file });
        expect(log.rows.length + log.rowsRefused).toBe(log.rowsRead);
        expect(log.rowsRefused).toBeGreaterThanOrEqual(0);
        if (log.rows.length === 0) expect(problemMessage(log)).not.toBe("");
      }),
      { numRuns: 500 },
    );
  });
});
