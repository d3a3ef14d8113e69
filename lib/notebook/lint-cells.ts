import { isBuiltin } from "node:module";
import type { CellProblem } from "./cell-problem.ts";
import { type CodeCell, problemAt } from "./code-cells.ts";
import { importsOf } from "./imports.ts";
import { declaredNames, statements, type TreeNode, walk } from "./syntax-tree.ts";

/** Names that exist in Node or Deno but not in a browser page, and what to use instead. */
const NOT_IN_A_BROWSER = new Map([
  ["Deno", 'read files with readText from "wetside/notebook"'],
  ["process", "set values in the parameters cell"],
  ["Buffer", "use text, or a Uint8Array"],
  ["require", "write an import statement"],
  ["__dirname", "paths given to readText start at the notebook's folder"],
  ["__filename", "paths given to readText start at the notebook's folder"],
  ["global", "write globalThis"],
]);

/** What in the cells would not run the same everywhere, or would clash in one module. */
export function lintCells(cells: readonly CodeCell[]): readonly CellProblem[] {
  return [
    ...cells.flatMap(lintImports),
    ...cells.flatMap((cell) => lintNodes(cell, new Set(cells.flatMap(namesIn)))),
    ...lintNames(cells),
    ...cells.flatMap(lintLastStatement),
  ];
}

function namesIn(cell: CodeCell): readonly string[] {
  const declared = statements(cell.program).flatMap(declaredNames);
  const imported = importsOf(cell).flatMap((each) => each.names);
  return [...declared.map((each) => each.name), ...imported.map((each) => each.local)];
}

function lintImports(cell: CodeCell): readonly CellProblem[] {
  return importsOf(cell).flatMap(({ from, start }) => {
    const message = importProblem(from);
    if (message !== undefined) return [problemAt(cell, start, message)];
    if (!cell.tags.includes("raises-exception")) return [];
    const advice = "move the import to a cell above: this one is expected to fail";
    return [problemAt(cell, start, advice)];
  });
}

function importProblem(from: string): string | undefined {
  const advice =
    'a cell must also run in a browser; use "wetside/notebook", or a library by its name';
  if (isBuiltin(from)) return `import from "${from}": that module is Node's own; ${advice}`;
  const prefix = /^(npm|jsr|https?|data|file):/.exec(from)?.[1];
  if (prefix === undefined) return undefined;
  return `import from "${from}": a name that starts with "${prefix}:" does not work in every place a cell runs; install the library and import it by its bare name`;
}

function lintNodes(cell: CodeCell, known: ReadonlySet<string>): readonly CellProblem[] {
  const problems: CellProblem[] = [];
  const add = (node: TreeNode, message: string) =>
    problems.push(problemAt(cell, node.start, message));
  walk(cell.program as unknown as TreeNode, (node, parent, key) => {
    if (node.type === "MetaProperty" && node.meta !== undefined) {
      if ((node.meta as TreeNode).name === "import") {
        add(
          node,
          "import.meta is not the same everywhere; paths given to readText start at the notebook's folder",
        );
      }
    } else if (node.type === "ImportExpression") {
      const from = (node.source as TreeNode).value;
      const message = typeof from === "string" ? importProblem(from) : undefined;
      if (message !== undefined) add(node, message);
    } else if (/^Export/.test(node.type)) {
      add(node, "a cell cannot export; every name declared at its top is seen by the cells below");
    } else if (node.type === "Identifier" && !isPropertyName(parent, key)) {
      const name = String(node.name);
      const advice = NOT_IN_A_BROWSER.get(name);
      if (advice !== undefined && !known.has(name))
        add(node, `${name} is not there in a browser; ${advice}`);
    }
  });
  return problems;
}

function isPropertyName(parent: TreeNode | undefined, key: string): boolean {
  if (parent === undefined || parent.computed === true) return false;
  return (parent.type === "MemberExpression" && key === "property") || key === "key";
}

function lintNames(cells: readonly CodeCell[]): readonly CellProblem[] {
  const seen = new Map<string, { readonly cell: number; readonly as: string }>();
  const problems: CellProblem[] = [];
  for (const cell of cells) {
    if (cell.tags.includes("raises-exception") || cell.tags.includes("injected-parameters"))
      continue;
    const imported = importsOf(cell).flatMap(({ from, names, start }) =>
      names.map((each) => ({
        name: each.local,
        start,
        as: `${from} ${each.imported} ${each.typeOnly}`,
      })),
    );
    const declared = statements(cell.program)
      .flatMap(declaredNames)
      .map((each) => ({ ...each, as: "declaration" }));
    for (const { name, start, as } of [...imported, ...declared]) {
      const before = seen.get(name);
      if (before === undefined) seen.set(name, { cell: cell.number, as });
      else if (as === "declaration" || before.as !== as) {
        const where = before.cell === cell.number ? "above in this cell" : `in cell ${before.cell}`;
        const message = `the name "${name}" is already declared ${where}; give this one another name`;
        problems.push(problemAt(cell, start, message));
      }
    }
  }
  return problems;
}

function lintLastStatement(cell: CodeCell): readonly CellProblem[] {
  const last = statements(cell.program).at(-1);
  if (last === undefined || !/^(For|ForIn|ForOf|While|DoWhile)Statement$/.test(last.type))
    return [];
  const advice =
    "a loop as last statement shows its last value in some kernels and nothing in others; end the cell with an expression or a declaration";
  return [problemAt(cell, last.start, advice)];
}
