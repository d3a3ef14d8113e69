import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { installHost } from "../../lib/notebook/host.ts";
import { saveJson, saveText } from "../../lib/notebook/save.ts";

const saved = new Map<string, string>();
let restore = () => {};
beforeEach(() => {
  saved.clear();
  restore = installHost({
    show() {},
    announce() {},
    readBytes: async () => new Uint8Array(),
    saveText: (name, text) => saved.set(name, text),
  });
});
afterEach(() => restore());

describe("what a cell saves", () => {
  it("is JSON that can be read back", () => {
    saveJson("verdict", { line: "film", ok: true });
    expect(JSON.parse(saved.get("verdict.json") ?? "")).toEqual({ line: "film", ok: true });
  });
  it("gets a plain name and nothing that leads to another folder", () => {
    for (const name of ["../verdict.json", "a/b.json", "/tmp/x", "..", "", ".hidden", "a\\b"]) {
      expect(() => saveText(name, "x"), name).toThrow(/write a plain file name/);
    }
    expect(saved.size).toBe(0);
  });
  it("is refused if JSON would lose it", () => {
    expect(() => saveJson("a", { rate: Number.NaN })).toThrow(/value's "rate" is "NaN"/);
    expect(() => saveJson("a", { rates: new Map() })).toThrow(/JSON cannot hold that/);
    expect(() => saveJson("a", undefined)).toThrow(/write a value that JSON can hold/);
    expect(() => saveJson("a", () => 1)).toThrow(/JSON cannot hold that/);
    expect(saved.size).toBe(0);
  });
  it("is refused if it should be text and is not", () => {
    expect(() => saveText("a.txt", 3 as never)).toThrow(/use saveJson for data/);
  });
});
