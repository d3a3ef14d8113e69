import { describe, expect, it } from "vitest";
import { InputError } from "wetside/input";
import { simulatedLines, simulateLab } from "wetside/simulate";

const [film, paper] = simulatedLines;
if (film === undefined || paper === undefined) throw new Error("the lab has two lines");
const [developer, ...others] = film.baths;
if (developer === undefined) throw new Error("the film line has a developer");

const run = (...lines: readonly unknown[]) =>
  simulateLab({ seed: 1, days: 2, lines: lines as typeof simulatedLines });
const { rateMlPerM2, ...withoutRate } = developer;

const refused: readonly (readonly [words: string, lines: readonly unknown[], message: string])[] = [
  ["nothing", [null], "lines[0] is null; write a line like those of simulatedLines"],
  ["a line without a name", [{ ...film, id: "" }], 'lines[0].id is ""; write a word'],
  [
    "a process whose densities it does not know, and proposes the closest",
    [{ ...film, process: "color-negative" }],
    '(did you mean "colour-negative"?)',
  ],
  ["a line without baths", [{ ...film, baths: [] }], "lines[0].baths is []; write its baths"],
  [
    "a bath of no volume",
    [{ ...film, baths: [{ ...developer, volumeL: 0 }] }],
    "lines[0].baths[0].volumeL is 0; write a finite number greater than 0 L",
  ],
  [
    "a developer that is not replenished",
    [{ ...film, baths: [withoutRate, ...others] }],
    "lines[0].baths[0].rateMlPerM2 is missing; write a finite number greater than 0 mL/m² (the first bath is the developer, which is replenished)",
  ],
  [
    "a temperature in degrees Fahrenheit",
    [{ ...film, baths: [{ ...developer, setTemperatureC: 100 }] }],
    "lines[0].baths[0].setTemperatureC is 100; write a finite number at least 5 °C",
  ],
  [
    "a pump that gives nothing a stroke",
    [{ ...film, baths: [{ ...developer, settingMlPerStroke: 0 }] }],
    "lines[0].baths[0].settingMlPerStroke is 0",
  ],
  ["less than no work", [{ ...film, areaM2PerDay: -1 }], "lines[0].areaM2PerDay is -1"],
  ["work of no format", [{ ...film, formats: [] }], "lines[0].formats is []"],
  [
    "a format that does not exist",
    [{ ...film, formats: [{ format: "135-63", share: 1 }] }],
    '(did you mean "135-36"?)',
  ],
  [
    "a share of nothing",
    [{ ...film, formats: [{ format: "120", share: 0 }] }],
    "lines[0].formats[0].share is 0",
  ],
  [
    "a reference strip beyond the densitometer",
    [{ ...film, reference: { ...film.reference, dMax: { red: 1, green: 2, blue: 28.7 } } }],
    "lines[0].reference.dMax.blue is 28.7; write a finite number at least 0 and at most 4.5",
  ],
  [
    "a start-up strip after midday's",
    [{ ...film, startUp: "13:00" }],
    'lines[0].startUp is "13:00"; write the time of the first strip as HH:MM, no later than 12:30',
  ],
  ["a line twice", [film, { ...paper, id: "film" }], "lines.id is"],
  [
    "two lines of one process, whose strips could not be told apart",
    [film, { ...film, id: "second film", baths: paper.baths }],
    'lines.process is "colour-negative"; write one line a process',
  ],
  [
    "two baths of one name, whose pumps could not be told apart",
    [film, { ...paper, baths: film.baths }],
    'baths.id is "film-developer"; give every bath of the lab an id of its own',
  ],
];

describe("a line of a simulated lab", () => {
  for (const [words, lines, message] of refused) {
    it(`refuses ${words}`, () => {
      expect(() => run(...lines)).toThrow(InputError);
      expect(() => run(...lines)).toThrow(message);
    });
  }

  it("may be the lab's own", () => {
    const own = { ...paper, id: "prints", startUp: "06:45", areaM2PerDay: 4 };
    const { strips, remakes } = run(own);
    expect(strips[0]?.takenAt.slice(0, 13)).toBe("2026-05-17T06");
    expect(remakes).toHaveLength(2);
  });
});
