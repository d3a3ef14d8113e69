import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checksPage, printedSources } from "./checks-page.ts";

const page = readFileSync(new URL("../../docs/checks.md", import.meta.url), "utf8");

/** Sources, quantities and published values of a page; what is computed is tested beside it. */
function published(text: string): readonly string[] {
  return text
    .split("\n")
    .filter((line) => /^(## |\| |How obtained|\d+ values)/.test(line))
    .map((line) => line.split(" | ").slice(0, 2).join(" | "));
}

describe("the page of published checks", () => {
  it("shows every published value (else run npm run checks)", async () => {
    const sources = await printedSources(async () => ({}));
    expect(published(page)).toEqual(published(checksPage(sources)));
  });
});
