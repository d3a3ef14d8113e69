import type { Program } from "oxc-parser";

/** Any node of a syntax tree. */
export interface TreeNode {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

/** True for a node of a syntax tree. */
export function isNode(value: unknown): value is TreeNode {
  return (
    typeof value === "object" && value !== null && typeof (value as TreeNode).type === "string"
  );
}

/** Calls `visit` for every node, outer before inner, with the node's parent. */
export function walk(
  node: TreeNode,
  visit: (node: TreeNode, parent: TreeNode | undefined, key: string) => void,
  parent?: TreeNode,
  key = "",
): void {
  visit(node, parent, key);
  for (const [name, value] of Object.entries(node)) {
    for (const each of Array.isArray(value) ? value : [value]) {
      if (isNode(each)) walk(each, visit, node, name);
    }
  }
}

/** The statements of a cell, as nodes. */
export function statements(program: Program): readonly TreeNode[] {
  return program.body as unknown as readonly TreeNode[];
}

/** A name declared at the top of a cell, and where. */
export interface Declared {
  readonly name: string;
  readonly start: number;
}

/** Names that a statement declares for the cells after it; imports are not among them. */
export function declaredNames(statement: TreeNode): readonly Declared[] {
  if (statement.type === "VariableDeclaration") {
    return nodes(statement.declarations).flatMap((each) => patternNames(each.id));
  }
  const declares = /^(Function|Class|TSInterface|TSTypeAlias|TSEnum|TSModule)Declaration$/.test(
    statement.type,
  );
  return declares ? patternNames(statement.id) : [];
}

function patternNames(pattern: unknown): readonly Declared[] {
  if (!isNode(pattern)) return [];
  switch (pattern.type) {
    case "Identifier":
      return [{ name: String(pattern.name), start: pattern.start }];
    case "ObjectPattern":
      return nodes(pattern.properties).flatMap((each) => patternNames(each.value ?? each.argument));
    case "ArrayPattern":
      return nodes(pattern.elements).flatMap(patternNames);
    case "AssignmentPattern":
      return patternNames(pattern.left);
    case "RestElement":
      return patternNames(pattern.argument);
    default:
      return [];
  }
}

/** The nodes in a list that may hold gaps. */
export function nodes(value: unknown): readonly TreeNode[] {
  return Array.isArray(value) ? value.filter(isNode) : [];
}
