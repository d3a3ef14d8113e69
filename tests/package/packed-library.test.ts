import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import ts from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "wetside-packed-"));
const MINUTES = 60_000;

// A user's shell has none of the settings that npm hands to the scripts it runs.
const env = Object.fromEntries(
  Object.entries(process.env).filter(
    ([name]) => !name.startsWith("npm_") && name !== "NODE_OPTIONS",
  ),
);

function run(command: string, args: readonly string[], cwd: string): string {
  return execFileSync(command, args, {
    cwd,
    env,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "pipe"],
  });
}

const readme = readFileSync(join(root, "README.md"), "utf8");

/** The first fenced block of a language in the README. */
function block(language: string, after = ""): string {
  const from = readme.indexOf(after);
  const found = new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``).exec(readme.slice(from));
  return found?.[1] ?? "";
}

describe("the packed library, installed in an empty folder", () => {
  beforeAll(() => {
    run("npm", ["pack", "--silent", "--pack-destination", folder], root);
    const tarball = readdirSync(folder).find((name) => name.endsWith(".tgz")) ?? "";
    writeFileSync(
      join(folder, "package.json"),
      '{ "name": "user", "private": true, "type": "module" }',
    );
    run("npm", ["install", "--no-audit", "--no-fund", `./${tarball}`], folder);
  }, 10 * MINUTES);

  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("runs the README's first example and prints what the README says", () => {
    const example = block("ts");
    const code = ts.transpileModule(example, {
      compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
    }).outputText;
    writeFileSync(join(folder, "example.js"), code);
    expect(run("node", ["example.js"], folder)).toBe(block("", "\nprints\n"));
    expect(example.trim().split("\n").length).toBeLessThanOrEqual(13);
  });

  it("brings no notebook tool, data frame or plotting library along", () => {
    const installed = readdirSync(join(folder, "node_modules"));
    const heavy = [
      "danfojs",
      "vega",
      "vega-lite",
      "plotly.js-dist-min",
      "typescript",
      "tsx",
      "esbuild",
    ];
    expect(installed.filter((name) => heavy.includes(name) || name === "@tensorflow")).toEqual([]);
    const packages = installed.filter((name) => !name.startsWith("."));
    expect(packages.length).toBeLessThanOrEqual(15);
  });

  it("has types that a strict project compiles against", () => {
    writeFileSync(join(folder, "example.ts"), block("ts"));
    const options: ts.CompilerOptions = {
      strict: true,
      noEmit: true,
      target: ts.ScriptTarget.ES2022,
      lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
      module: ts.ModuleKind.NodeNext,
      moduleResolution: ts.ModuleResolutionKind.NodeNext,
      types: [],
    };
    const program = ts.createProgram([join(folder, "example.ts")], options);
    const messages = ts
      .getPreEmitDiagnostics(program)
      .map((each) => ts.flattenDiagnosticMessageText(each.messageText, "\n"));
    expect(messages).toEqual([]);
  });

  it("offers each room by its own name", () => {
    const rooms = [
      "control",
      "development",
      "records",
      "solutions",
      "uncertainty",
      "units",
      "figures",
    ];
    const code = rooms.map((room, i) => `import * as r${i} from "wetside/${room}";`).join("\n");
    const list = rooms.map((_, i) => `Object.keys(r${i}).length > 0`).join(" && ");
    writeFileSync(join(folder, "rooms.js"), `${code}\nconsole.log(${list});`);
    expect(run("node", ["rooms.js"], folder).trim()).toBe("true");
  });

  it("bundles one function for a page without the rest of the library", () => {
    const file = join(folder, "page.js");
    writeFileSync(
      file,
      'import { dilute } from "wetside"; document.title = dilute({ ratio: "1+9", totalMl: 500 }).ratio;',
    );
    const { outputFiles } = buildSync({
      entryPoints: [file],
      bundle: true,
      minify: true,
      platform: "browser",
      format: "esm",
      write: false,
    });
    const code = outputFiles[0]?.text ?? "";
    expect(code).toContain("document.title");
    expect(code).not.toContain("node:");
    // Measured: 23 kB, of which the cautions are 13; with every table of the room it was 395 kB.
    expect(code.length).toBeLessThan(40_000);
  });

  it("says which packages a notebook run needs, without a stack", () => {
    let message = "";
    try {
      run("npx", ["wetside", "run", "nothing.ipynb"], folder);
    } catch (error) {
      message = String((error as { stderr?: unknown }).stderr);
    }
    expect(message).toMatch(/npm install --save-dev|nothing\.ipynb/);
    expect(message).not.toMatch(/\n\s+at /);
  });
});
