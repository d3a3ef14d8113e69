import type { CodeCell } from "./code-cells.ts";
import { nodes, statements, type TreeNode } from "./syntax-tree.ts";

/** One name that an import brings in. */
export interface ImportedName {
  readonly local: string;
  /** Name in the module imported from: `default`, `*` or its own. */
  readonly imported: string;
  readonly typeOnly: boolean;
}

/** One import statement of a cell. */
export interface CellImport {
  readonly from: string;
  readonly names: readonly ImportedName[];
  readonly start: number;
  readonly end: number;
  /** What follows the module's name: ` with { type: "json" }`. */
  readonly attributes: string;
}

/** The import statements of a cell, in order. */
export function importsOf(cell: CodeCell): readonly CellImport[] {
  return statements(cell.program)
    .filter((statement) => statement.type === "ImportDeclaration")
    .map((statement) => cellImport(cell, statement));
}

function cellImport(cell: CodeCell, statement: TreeNode): CellImport {
  const source = statement.source as TreeNode;
  const names = nodes(statement.specifiers).map((specifier) => {
    const local = String((specifier.local as TreeNode).name);
    const typeOnly = statement.importKind === "type" || specifier.importKind === "type";
    return { local, imported: importedName(specifier), typeOnly };
  });
  const attributes = cell.source.slice(source.end, statement.end).replace(/;\s*$/, "").trim();
  const { start, end } = statement;
  return { from: String(source.value), names, start, end, attributes };
}

function importedName(specifier: TreeNode): string {
  if (specifier.type === "ImportDefaultSpecifier") return "default";
  if (specifier.type === "ImportNamespaceSpecifier") return "*";
  const imported = specifier.imported as TreeNode;
  return String(imported.name ?? imported.value);
}

/** An import statement as text; nothing if it has no names left. */
export function importText(
  found: CellImport,
  names: readonly ImportedName[],
  from: string,
): string {
  const tail = `${JSON.stringify(from)}${found.attributes === "" ? "" : ` ${found.attributes}`};`;
  if (found.names.length === 0) return `import ${tail}`;
  return names.map((name) => `import ${typeWord(name)}${clause(name)} from ${tail}`).join(" ");
}

function typeWord(name: ImportedName): string {
  return name.typeOnly ? "type " : "";
}

function clause({ imported, local }: ImportedName): string {
  if (imported === "default") return local;
  if (imported === "*") return `* as ${local}`;
  return imported === local ? `{ ${local} }` : `{ ${imported} as ${local} }`;
}
