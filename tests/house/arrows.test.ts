import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { sourceFiles } from "./doc-examples.ts";

// Which room may lean on which. A room not listed here may lean on nothing.
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  input: [],
  numerics: ["input"],
  units: ["input"],
  solutions: ["input", "numerics", "units"],
  development: ["input", "numerics", "units", "solutions"],
  control: ["input", "numerics", "units"],
  uncertainty: ["input", "numerics", "units"],
  replenishment: ["input", "numerics", "units", "solutions"],
  records: ["input", "units", "control"],
  simulate: ["input", "numerics", "units", "solutions", "development", "replenishment", "control"],
  figures: [
    "input",
    "numerics",
    "units",
    "solutions",
    "development",
    "control",
    "replenishment",
    "uncertainty",
    "records",
    "simulate",
  ],
  notebook: ["input", "figures"],
};

// Libraries a room may lean on at run time; notebook tools and data frames belong to lib/notebook.
const LIBRARIES: readonly string[] = [
  "mf-parser",
  "ml-levenberg-marquardt",
  "ml-matrix",
  "papaparse",
  "pure-rand",
  "simple-statistics",
  "@stdlib",
];

const root = fileURLToPath(new URL("../../lib/", import.meta.url));

interface Import {
  readonly file: string;
  readonly room: string;
  readonly target: string;
}

const imports: readonly Import[] = sourceFiles(root.slice(0, -1)).flatMap((path) => {
  const file = path.slice(root.length).replaceAll("\\", "/");
  const room = file.includes("/") ? (file.split("/")[0] ?? "") : "";
  return importedNames(readFileSync(path, "utf8")).map((target) => ({ file, room, target }));
});

/** What a file imports, statically and dynamically, types left out (they are gone at run time). */
function importedNames(text: string): string[] {
  const names: string[] = [];
  const visit = (node: ts.Node): void => {
    const typeOnly = ts.isImportDeclaration(node) && node.importClause?.isTypeOnly;
    const from =
      ts.isImportDeclaration(node) || ts.isExportDeclaration(node)
        ? node.moduleSpecifier
        : ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword
          ? node.arguments[0]
          : undefined;
    if (from && ts.isStringLiteralLike(from) && !typeOnly) names.push(from.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("file.ts", text, ts.ScriptTarget.ESNext));
  return names;
}

function roomOf({ file, target }: Import): string | undefined {
  const parts = new URL(target, `file:///lib/${file}`).pathname.split("/");
  return parts[1] === "lib" ? parts[2] : undefined;
}

describe("the arrows between the rooms", () => {
  it("point only where the plan of the house allows", () => {
    const wrong = imports
      .filter(({ room, target }) => room !== "" && target.startsWith("."))
      .filter((each) => {
        const to = roomOf(each);
        return to !== undefined && to !== each.room && !MAY_IMPORT[each.room]?.includes(to);
      });
    expect(wrong).toEqual([]);
  });

  it("go through a room's index, never into its files", () => {
    const wrong = imports
      .filter(({ room, target }) => room !== "" && target.startsWith("."))
      .filter((each) => {
        const to = roomOf(each);
        return to !== undefined && to !== each.room && !each.target.endsWith(`/${to}/index.ts`);
      });
    expect(wrong).toEqual([]);
  });

  it("leave Node, data frames and plotting libraries to lib/notebook", () => {
    const wrong = imports
      .filter(({ room, target }) => room !== "notebook" && !target.startsWith("."))
      .filter(({ target }) => {
        const [scope = ""] = target.split("/");
        return !LIBRARIES.includes(scope);
      });
    expect(wrong).toEqual([]);
  });

  it("are found at all", () => {
    expect(imports.length).toBeGreaterThan(20);
  });
});

describe("a file in lib/", () => {
  it("keeps to one concept: no more than 160 lines", () => {
    const long = sourceFiles(root.slice(0, -1))
      .map(
        (path) => [path.slice(root.length), readFileSync(path, "utf8").split("\n").length] as const,
      )
      .filter(([, lines]) => lines > 161);
    expect(long).toEqual([]);
  });
});
