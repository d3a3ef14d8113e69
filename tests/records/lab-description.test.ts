import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { InputError } from "wetside";
import { loggedBaths, parseLabDescription } from "wetside/records";

const demo = readFileSync(new URL("../../data/pellow-street/lab.json", import.meta.url), "utf8");
const minimal = {
  name: "Shed",
  lines: [
    {
      id: "film",
      name: "Film",
      process: "colour-negative",
      strips: "strips.csv",
      patches: ["ld"],
      formats: ["120"],
      baths: [{ id: "dev", role: "developer", volumeL: 5, setTemperatureC: 37.8, timeMin: 3.25 }],
    },
  ],
  pumps: [{ id: "dev-pump", bath: "dev", settingMlPerStroke: 5, rateMlPerM2: 600 }],
  files: { stripBatches: "batches.csv" },
};

describe("a lab's description", () => {
  it("of the demo lab is sound and gives its baths and dryers", () => {
    const lab = parseLabDescription(demo);
    expect(lab.name).toBe("Pellow Street Lab");
    expect(loggedBaths(lab)).toHaveLength(10);
    expect(loggedBaths(lab)).toContainEqual({ id: "paper-dryer", setTemperatureC: 71 });
  });

  it("may be as short as this, with a byte order mark or without", () => {
    expect(parseLabDescription(minimal)).toEqual(minimal);
    expect(parseLabDescription(`\ufeff${JSON.stringify(minimal)}`)).toEqual(minimal);
  });

  it("is told everything that is wrong at once", () => {
    const line = minimal.lines[0];
    const wrong = {
      lines: [{ ...line, name: "", baths: [{ ...line?.baths[0], volumeL: -5, timeMin: "3:15" }] }],
      pumps: [{ id: "p", bath: "fix", settingMlPerStroke: 0, rateMlPerM2: 600 }],
      files: {},
    };
    expect(() => parseLabDescription(wrong)).toThrow(InputError);
    const told = [
      "name is missing; write a text",
      'lines[0].name is ""; write a text',
      "lines[0].baths[0].volumeL is -5; write a number greater than 0",
      'lines[0].baths[0].timeMin is "3:15"; write a number greater than 0',
      'pumps[0].bath is "fix"; write one of dev',
      "pumps[0].settingMlPerStroke is 0; write a number greater than 0",
      "files.stripBatches is missing; write a text",
    ];
    for (const problem of told) expect(() => parseLabDescription(wrong)).toThrow(problem);
  });

  it("is told a day that is none, ids that occur twice, and a field that is misspelt", () => {
    const [line] = minimal.lines;
    const [pump] = minimal.pumps;
    const { process, ...rest } = { ...line, baths: [] };
    const lines = [line, { ...rest, proces: process }];
    const wrong = { ...minimal, today: "14.8.2026", lines, pumps: [pump, pump] };
    const [bath] = line?.baths ?? [];
    const baths = [{ ...bath, setTemperatureC: "37,8", timeMin: "3" }];
    const typed = { ...minimal, lines: [{ ...line, baths }] };
    expect(() => parseLabDescription(typed)).toThrow(
      'lines[0].baths[0].setTemperatureC is "37,8"; write a number: 37.8; lines[0].baths[0].timeMin is "3"; write a number greater than 0: 3',
    );
    const told = [
      'today is "14.8.2026"; write a day: "2026-08-14", or leave it out',
      'lines[1].process is missing; write a text (is it what "proces" holds?)',
      "the line film occurs twice; give each its own id",
      "the pump dev-pump occurs twice; give each its own id",
    ];
    for (const problem of told) expect(() => parseLabDescription(wrong)).toThrow(problem);
    expect(() => parseLabDescription({ ...minimal, today: "2026-02-30" })).toThrow("today is");
    expect(parseLabDescription({ ...minimal, today: "2026-08-14" }).today).toBe("2026-08-14");
  });

  it("is told which file it is, if that is said", () => {
    const file = "my-lab/lab.json";
    expect(() => parseLabDescription("{", { file })).toThrow(
      'my-lab/lab.json is "{"; write a JSON object',
    );
    expect(() => parseLabDescription({ ...minimal, name: "" }, { file })).toThrow(
      'my-lab/lab.json is "unsound"; mend this: name is ""; write a text',
    );
  });

  it("answers volumes typed with a unit with the number to write", () => {
    const [line] = minimal.lines;
    const [pump] = minimal.pumps;
    const baths = [{ ...line?.baths[0], volumeL: "5 gal" }];
    const pumps = [{ ...pump, settingMlPerStroke: "5 ml" }];
    const wrong = () => parseLabDescription({ ...minimal, lines: [{ ...line, baths }], pumps });
    expect(wrong).toThrow("write litres: 18.927 for US gallons, 22.73 for imperial gallons");
    expect(wrong).toThrow("write millilitres, the number alone: 5");
  });

  it("refuses one bath under two roofs, and what is no list, object or JSON", () => {
    const [line] = minimal.lines;
    const doubled = { ...minimal, lines: [line, line] };
    expect(() => parseLabDescription(doubled)).toThrow("the bath dev occurs twice");
    expect(() => parseLabDescription({ ...minimal, lines: "film" })).toThrow("write a list");
    expect(() => parseLabDescription([])).toThrow("write an object");
    expect(() => parseLabDescription({ ...minimal, lines: [3] })).toThrow("lines[0] is 3");
    expect(() => parseLabDescription("{")).toThrow("write a JSON object");
    const patches = { ...minimal, lines: [{ ...line, patches: [1] }] };
    expect(() => parseLabDescription(patches)).toThrow("patches must be a list of words");
  });
});
