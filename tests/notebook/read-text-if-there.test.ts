import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, describe, expect, it } from "vitest";
import { InputError } from "../../lib/input/index.ts";
import { installHost, readTextIfThere } from "../../lib/notebook/index.ts";

const folder = mkdtempSync(join(tmpdir(), "wetside-if-there-"));
let restore = () => {};
afterEach(() => restore());
afterAll(() => rmSync(folder, { recursive: true }));
const failing = (error: Error) => {
  restore = installHost({
    show() {},
    announce() {},
    saveText() {},
    readBytes: async () => {
      throw error;
    },
  });
};

describe("a file that may be there", () => {
  it("gives its text, also when it is empty", async () => {
    writeFileSync(join(folder, "a.csv"), "R,G,B");
    writeFileSync(join(folder, "empty.csv"), "");
    expect(await readTextIfThere(join(folder, "a.csv"))).toBe("R,G,B");
    expect(await readTextIfThere(join(folder, "empty.csv"))).toBe("");
  });
  it("is undefined if it is not there, whoever says so", async () => {
    expect(await readTextIfThere(join(folder, "none.csv"))).toBeUndefined();
    expect(await readTextIfThere(join(folder, "no-folder", "none.csv"))).toBeUndefined();
    expect(await readTextIfThere("")).toBeUndefined();
    for (const error of [
      new InputError("readText", "path", "b.csv", "there is no such file; paths start there"),
      new InputError("readText", "path", "b.csv", "that folder does not exist; paths start there"),
      new Error("No such file or directory (os error 2): readfile 'b.csv' NotFound"),
      new Error("404 Not Found"),
    ]) {
      failing(error);
      expect(await readTextIfThere("b.csv")).toBeUndefined();
      restore();
    }
  });
  it("is an error if it is there and cannot be read, whatever its name", async () => {
    failing(new Error("EACCES: permission denied, open 'ENOENT.csv'"));
    await expect(readTextIfThere("ENOENT.csv")).rejects.toThrow(/cannot be read/);
    restore();
    writeFileSync(join(folder, "sheet.csv"), new Uint8Array([0x50, 0x4b, 3, 4]));
    await expect(readTextIfThere(join(folder, "sheet.csv"))).rejects.toThrow(/spreadsheet/);
  });
});
