import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { crossedReadings } from "wetside/control";
import { parseDensitometerLog, requireCleanLog } from "wetside/records";
import { gaugeFiles } from "../../data/pellow-street-gauge/make.ts";

describe("the invented lab's gauge study", () => {
  for (const [name, text] of Object.entries(gaugeFiles())) {
    it(`is made again byte for byte: ${name}`, () => {
      const path = new URL(`../../data/pellow-street-gauge/${name}`, import.meta.url);
      expect(readFileSync(path, "utf8")).toBe(text);
    });
  }

  it("is a complete crossed study of three operators, ten patches and three repeats", () => {
    const text = gaugeFiles()["gauge-study.csv"] ?? "";
    const rows = requireCleanLog(parseDensitometerLog(text, { file: "gauge-study.csv" }));
    const study = crossedReadings(rows);
    expect(study.operators).toEqual(["MB", "OW", "TK"]);
    expect(study.patches).toHaveLength(10);
    expect(study.readings.flat(2)).toHaveLength(90);
  });
});
