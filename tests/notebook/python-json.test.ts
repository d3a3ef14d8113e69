import { describe, expect, it } from "vitest";
import { pythonJson } from "../../lib/notebook/python-json.ts";

// Expected texts: Python 3.11.2, json.dumps(value, ensure_ascii=False, indent=1, sort_keys=True).
describe("JSON as Jupyter writes it", () => {
  it("prints numbers as Python does", () => {
    const numbers = [0.1, 1e-5, 1.5e-7, 1e22, 0.0001, 123456789.123, 5e-324, -2.5e-10];
    const expected = "0.1 1e-05 1.5e-07 1e+22 0.0001 123456789.123 5e-324 -2.5e-10".split(" ");
    expect(pythonJson(numbers)).toBe(`[\n ${expected.join(",\n ")}\n]\n`);
    expect(pythonJson([1.7976931348623157e308, true, null])).toContain("1.7976931348623157e+308");
  });
  it("keeps whole numbers whole", () => {
    expect(pythonJson([1, -0, 1e16, 123456789012])).toBe(
      "[\n 1,\n 0,\n 10000000000000000,\n 123456789012\n]\n",
    );
  });
  it("sorts keys by code point and indents by one space", () => {
    const value = { "\u{1f600}": 1, "\uffff": 2, é: "x", a: { z: [], Z: {} } };
    expect(pythonJson(value)).toBe(
      '{\n "a": {\n  "Z": {},\n  "z": []\n },\n "é": "x",\n "\uffff": 2,\n "\u{1f600}": 1\n}\n',
    );
  });
  it("escapes control characters and leaves every other letter as it is", () => {
    expect(pythonJson('\u2028\x7f\x1b"\\/ °C')).toBe('"\u2028\x7f\\u001b\\"\\\\/ °C"\n');
  });
  it("leaves out what is undefined", () => {
    expect(pythonJson({ a: undefined })).toBe("{}\n");
  });
});
