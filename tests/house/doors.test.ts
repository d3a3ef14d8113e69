import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { publicFunctions, runExample, sourceFiles } from "./doc-examples.ts";

// Every public function is called as its example calls it, with one argument of the wrong shape at
// a time. It may make sense of it or refuse it in its own words, but must not fall over inside.

const root = fileURLToPath(new URL("../../", import.meta.url));
const rooms = readdirSync(`${root}lib`).filter(
  (name) => name !== "notebook" && existsSync(`${root}lib/${name}/index.ts`),
);
const scope: Readonly<Record<string, unknown>> = Object.assign(
  {},
  ...(await Promise.all(rooms.map((room) => import(`../../lib/${room}/index.ts`)))),
);
// For those who write functions, not for those who call them; and one that takes any object.
const NOT_FOR_CALLERS = ["requireNumber", "requireOneOf", "closestWord", "displayedAs"];
const functions = sourceFiles(`${root}lib`)
  .flatMap((path) => publicFunctions(path, root))
  .filter(({ name }) => name in scope && !NOT_FOR_CALLERS.includes(name))
  .filter(({ name }) => !/^class\b/.test(String(scope[name])));

type Call = (...args: readonly unknown[]) => unknown;

/** The arguments of the first call that an example makes of the function it belongs to. */
async function firstCall(name: string, code: string): Promise<readonly unknown[] | undefined> {
  const real = scope[name] as Call;
  let seen: readonly unknown[] | undefined;
  const recorded: Call = (...args) => {
    seen ??= args;
    return real(...args);
  };
  await runExample(code, { ...scope, [name]: recorded }, () => {});
  return seen;
}

/** What a function says to one wrong argument, if it is not one of the library's own errors. */
async function stumble(
  call: Call,
  args: readonly unknown[],
  at: number,
  wrong: unknown,
): Promise<string | undefined> {
  try {
    await call(...args.map((arg, i) => (i === at ? wrong : arg)));
    return undefined;
  } catch (error) {
    const { name, message } = error as Error;
    const own = name === "InputError" || name === "LogError";
    return own ? undefined : `argument ${at + 1} = ${JSON.stringify(wrong)}: ${name}: ${message}`;
  }
}

const WRONG: readonly unknown[] = [null, 7, "x", true];

describe("a public function given an argument of the wrong shape", () => {
  it.each(functions)("says so in its own words: $name", async ({ name, examples }) => {
    const args = await firstCall(name, examples[0]?.code ?? "");
    const found: (string | undefined)[] = [];
    for (const [at, arg] of (args ?? []).entries()) {
      const shaped = (typeof arg === "object" && arg !== null) || typeof arg === "function";
      for (const wrong of shaped ? WRONG : []) {
        found.push(await stumble(scope[name] as Call, args ?? [], at, wrong));
      }
    }
    expect(found.filter((each) => each !== undefined)).toEqual([]);
  });

  it.each(functions.filter(({ file }) => !/^lib\/figures/.test(file)))(
    "says so of what an argument lacks: $name",
    async ({ name, examples }) => {
      const args = await firstCall(name, examples[0]?.code ?? "");
      const found: (string | undefined)[] = [];
      for (const [at, arg] of (args ?? []).entries()) {
        if (typeof arg !== "object" || arg === null || Array.isArray(arg)) continue;
        for (const [key, part] of Object.entries(arg)) {
          if (typeof part !== "object" || part === null) continue;
          for (const wrong of [undefined, 7]) {
            const broken = { ...arg, [key]: wrong };
            const said = await stumble(scope[name] as Call, args ?? [], at, broken);
            if (said !== undefined) found.push(`${key}: ${said}`);
          }
        }
      }
      expect(found).toEqual([]);
    },
  );
});
