import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as everything from "wetside";
import * as figures from "wetside/figures";

const page = readFileSync(new URL("../../docs/figures.md", import.meta.url), "utf8");

describe("the page about figures", () => {
  it("names everything that the room gives out", () => {
    const missing = Object.keys(figures).filter((name) => !page.includes(`\`${name}\``));
    expect(missing).toEqual([]);
  });
  it("names no function that is not there", () => {
    const table = page.slice(0, page.indexOf("## What a figure object is"));
    const named = [...table.matchAll(/`([a-z][A-Za-z]+)`/g)].map(([, name = ""]) => name);
    expect(named.filter((name) => !Object.hasOwn(everything, name))).toEqual([]);
  });
});
