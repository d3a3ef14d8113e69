import { describe, expect, it } from "vitest";
import { decodeText } from "../../lib/notebook/read-text.ts";

const utf8 = (text: string) => new TextEncoder().encode(text);

describe("the text in a file", () => {
  it("is read as UTF-8, without a byte-order mark", () => {
    expect(decodeText("a.csv", utf8("R;G;B °C\n"))).toBe("R;G;B °C\n");
    expect(decodeText("a.csv", utf8("\ufeffdate"))).toBe("date");
    expect(decodeText("a.csv", utf8(""))).toBe("");
  });
  it("is read as UTF-16 if the file says so", () => {
    expect(decodeText("a.csv", Uint8Array.of(0xff, 0xfe, 0x41, 0))).toBe("A");
    expect(decodeText("a.csv", Uint8Array.of(0xfe, 0xff, 0, 0x41))).toBe("A");
  });
  it("is refused if the file is a spreadsheet under another name", () => {
    const zip = Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0);
    expect(() => decodeText("strips.csv", zip)).toThrow(
      'readText: path is "strips.csv"; that file is a spreadsheet or an archive, not text; save the sheet as CSV (UTF-8)',
    );
    expect(() => decodeText("a.csv", Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0))).toThrow(/spreadsheet/);
  });
  it("is refused if its bytes are not UTF-8, and nothing is replaced in silence", () => {
    expect(() => decodeText("a.csv", Uint8Array.of(0x4d, 0xfc, 0x6c))).toThrow(/not UTF-8 text/);
  });
});
