import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functionIndex, functionPage } from "./function-index.ts";

const page = readFileSync(new URL("../../docs/functions.md", import.meta.url), "utf8");
const all = await functionIndex();

/** Names with their files, as a page lists them. */
function listed(text: string): readonly string[] {
  return [...text.matchAll(/^\| \[`(\w+)`\]\((\S+)\)/gm)].map(
    ([, name, file]) => `${name} ${file}`,
  );
}

describe("the list of every function", () => {
  it("names each public function and its file, and no other (else run npm run functions)", () => {
    expect(listed(functionPage(all)).length).toBe(all.length);
    expect(listed(page)).toEqual(listed(functionPage(all)));
  });
  it("has a whole sentence about each", () => {
    const short = all.filter(({ sentence }) => !/^[A-Z\p{L}].{8,}[.)]$/u.test(sentence));
    expect(short.map(({ name, sentence }) => `${name}: ${sentence}`)).toEqual([]);
  });
});
