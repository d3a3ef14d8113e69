import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { difference, publicFunctions, runExample, sourceFiles } from "./doc-examples.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const rooms = readdirSync(`${root}lib`).filter((name) => existsSync(`${root}lib/${name}/index.ts`));
const scope: Readonly<Record<string, unknown>> = Object.assign(
  {},
  ...(await Promise.all(rooms.map((room) => import(`../../lib/${room}/index.ts`)))),
);
const functions = sourceFiles(`${root}lib`)
  .flatMap((path) => publicFunctions(path, root))
  .filter((each) => each.name in scope);

describe("the examples in doc comments", () => {
  it("exist for every public function", () => {
    const without = functions.filter((each) => each.examples.length === 0);
    expect(without.map((each) => `${each.file}: ${each.name}`)).toEqual([]);
  });

  for (const { file, name, examples } of functions) {
    for (const example of examples) {
      it(`hold for ${name} (${file}:${example.line})`, async () => {
        const wrong: string[] = [];
        const checked = await runExample(example.code, scope, (actual, expected, line) => {
          const off = difference(actual, expected);
          if (off !== undefined) wrong.push(`${line}\n  ${off}`);
        });
        expect(wrong).toEqual([]);
        expect(checked, 'an example ends in "// => value"').toBeGreaterThan(0);
      });
    }
  }
});

describe("the comparison of an example with its value", () => {
  it("accepts a number to its printed digits and no further", () => {
    expect(difference(Math.PI, "3.14")).toBeUndefined();
    expect(difference(Math.PI, "3.15")).toContain("printed 3.15");
    expect(difference(Math.PI, "3")).toContain("printed 3");
    expect(difference(-0.5, "-0.5")).toBeUndefined();
    expect(difference(1.234e-9, "1.23e-9")).toBeUndefined();
  });
  it("compares arrays and objects part by part", () => {
    expect(difference([1, { a: "x" }], '[1, { a: "x" }]')).toBeUndefined();
    expect(difference([1, 2], "[1]")).toContain("computed [1,2]");
    expect(difference({ a: 1, b: 2 }, "{ a: 1 }")).toContain("computed also b");
    expect(difference({ a: 1 }, "{ a: 2 }")).toContain("value.a");
  });
  it("reads true, false, null and undefined as words", () => {
    expect(difference(true, "true")).toBeUndefined();
    expect(difference(undefined, "undefined")).toBeUndefined();
    expect(difference(false, "true")).toContain("computed false");
  });
});
