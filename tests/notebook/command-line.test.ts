import { describe, expect, it } from "vitest";
import { optionsHelp, parseCommandLine } from "../../lib/notebook/command-line.ts";

const RULES = {
  set: { value: "name=value", repeats: true, help: "change" },
  out: { value: "FILE", help: "where" },
  help: { help: "print this" },
};

describe("a command line", () => {
  it("is read into paths and options", () => {
    const { paths, options } = parseCommandLine(
      "run",
      ["a", "--set", "x=1", "--set=y=-2", "b", "--out", "-o", "--help"],
      RULES,
    );
    expect(paths).toEqual(["a", "b"]);
    expect([...options]).toEqual([
      ["set", ["x=1", "y=-2"]],
      ["out", ["-o"]],
      ["help", [""]],
    ]);
  });
  it("refuses unknown options with the nearest, or with the list", () => {
    expect(() => parseCommandLine("run", ["--sett"], RULES)).toThrow(
      'wetside run: option is "--sett"; did you mean --set?',
    );
    expect(() => parseCommandLine("run", ["--verbose"], RULES)).toThrow(
      /its options are --set, --out, --help/,
    );
  });
  it("refuses an option without its value, with one too many, or twice", () => {
    expect(() => parseCommandLine("run", ["--out"], RULES)).toThrow(
      /write a value after it: --out FILE/,
    );
    expect(() => parseCommandLine("run", ["--help=1"], RULES)).toThrow(/takes no value/);
    expect(() => parseCommandLine("run", ["--out", "a", "--out", "b"], RULES)).toThrow(/only once/);
  });
  it("prints its options for help", () => {
    expect(optionsHelp(RULES)).toContain("--set name=value  change");
  });
});
