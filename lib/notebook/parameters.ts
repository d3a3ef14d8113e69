import { InputError } from "../input/index.ts";
import type { CellProblem } from "./cell-problem.ts";
import { type CodeCell, problemAt, problemOnLine } from "./code-cells.ts";
import { nodes, statements, type TreeNode } from "./syntax-tree.ts";

/** A value that `--set` can change. */
export interface Parameter {
  readonly name: string;
  readonly type: ParameterType;
  /** Its value in the notebook, as written there. */
  readonly written: string;
  /** The comment beside it: unit and range. */
  readonly comment: string;
}

/** What values a parameter takes. */
export type ParameterType =
  | { readonly kind: "number" | "string" | "boolean" | "null" }
  | { readonly kind: "literal"; readonly value: string | number | boolean }
  | { readonly kind: "array"; readonly item: ParameterType }
  | { readonly kind: "union"; readonly among: readonly ParameterType[] }
  | { readonly kind: "other"; readonly text: string };

/** The parameters of a notebook and what is wrong with the cell that declares them. */
export interface Parameters {
  readonly cell: CodeCell | undefined;
  readonly parameters: readonly Parameter[];
  readonly problems: readonly CellProblem[];
}

/** Reads the cell tagged `parameters`. */
export function parametersOf(cells: readonly CodeCell[]): Parameters {
  const [cell, ...others] = cells.filter(({ tags }) => tags.includes("parameters"));
  if (cell === undefined) return { cell, parameters: [], problems: [] };
  const problems: CellProblem[] = others.map((other) =>
    problemOnLine(other, 0, `cell ${cell.number} is tagged "parameters" too; a notebook has one`),
  );
  const parameters: Parameter[] = [];
  for (const statement of statements(cell.program)) {
    if (statement.type !== "VariableDeclaration" || statement.kind !== "let") {
      const advice =
        "the parameters cell holds only declarations like: let days: number = 30; // d, 1 to 90";
      problems.push(problemAt(cell, statement.start, advice));
      continue;
    }
    for (const declaration of nodes(statement.declarations)) {
      const parameter = parameterOf(cell, declaration);
      if (parameter === undefined) {
        problems.push(
          problemAt(
            cell,
            declaration.start,
            "write one name and its value: let days: number = 30;",
          ),
        );
      } else parameters.push(parameter);
    }
  }
  return { cell, parameters, problems };
}

function parameterOf(cell: CodeCell, declaration: TreeNode): Parameter | undefined {
  const id = declaration.id as TreeNode;
  const init = declaration.init as TreeNode | null;
  if (id.type !== "Identifier" || init === null) return undefined;
  const annotation = (id.typeAnnotation as TreeNode | null)?.typeAnnotation as TreeNode | undefined;
  return {
    name: String(id.name),
    type: annotation === undefined ? typeOfValue(cell, init) : typeOfAnnotation(cell, annotation),
    written: cell.source.slice(init.start, init.end),
    comment: commentFor(cell, declaration),
  };
}

/** The comment on the declaration's last line, or alone on the line above it. */
function commentFor(cell: CodeCell, declaration: TreeNode): string {
  const lineOf = (offset: number) => cell.source.slice(0, offset).split("\n").length;
  const last = lineOf(declaration.end);
  const first = lineOf(declaration.start);
  const beside = cell.comments.find(
    (each) => lineOf(each.start) === last && each.start > declaration.start,
  );
  const above = cell.comments.find((each) => lineOf(each.end) === first - 1);
  return (beside ?? above)?.value.replace(/^\*+/, "").trim() ?? "";
}

function typeOfAnnotation(cell: CodeCell, node: TreeNode): ParameterType {
  const inner = (child: unknown) => typeOfAnnotation(cell, child as TreeNode);
  switch (node.type) {
    case "TSNumberKeyword":
      return { kind: "number" };
    case "TSStringKeyword":
      return { kind: "string" };
    case "TSBooleanKeyword":
      return { kind: "boolean" };
    case "TSNullKeyword":
      return { kind: "null" };
    case "TSLiteralType":
      return { kind: "literal", value: (node.literal as { value: string }).value };
    case "TSArrayType":
      return { kind: "array", item: inner(node.elementType) };
    case "TSUnionType":
      return { kind: "union", among: nodes(node.types).map(inner) };
    case "TSParenthesizedType":
    case "TSTypeOperator":
      return inner(node.typeAnnotation);
    default:
      return { kind: "other", text: cell.source.slice(node.start, node.end) };
  }
}

function typeOfValue(cell: CodeCell, node: TreeNode): ParameterType {
  if (node.type === "UnaryExpression") return typeOfValue(cell, node.argument as TreeNode);
  if (node.type === "TemplateLiteral") return { kind: "string" };
  if (node.type === "ArrayExpression") {
    const [first] = nodes(node.elements);
    if (first !== undefined) return { kind: "array", item: typeOfValue(cell, first) };
  }
  const kind = typeof node.value;
  if (node.type === "Literal" && (kind === "number" || kind === "string" || kind === "boolean")) {
    return { kind };
  }
  return { kind: "other", text: cell.source.slice(node.start, node.end) };
}

/** A parameter's type in words. */
export function typeWords(type: ParameterType): string {
  switch (type.kind) {
    case "number":
      return "a number";
    case "string":
      return "a text";
    case "boolean":
      return "true or false";
    case "null":
      return "null";
    case "literal":
      return JSON.stringify(type.value);
    case "array":
      return `a list in brackets, each item ${typeWords(type.item)}`;
    case "union":
      return type.among.map(typeWords).join(" or ");
    default:
      return `JSON of type ${type.text}`;
  }
}

/**
 * The value that a text after `--set name=` means for a parameter of that type.
 *
 * @throws InputError that says what to write instead
 */
export function parseSetting(parameter: Parameter, text: string): unknown {
  const found = settingOf(parameter.type, text);
  if (found.length > 0) return found[0];
  const unit = parameter.comment === "" ? "" : ` (${parameter.comment})`;
  const decimal = /^-?\d+,\d+$/.test(text.trim())
    ? ` (decimals with a point: ${text.trim().replace(",", ".")})`
    : "";
  const advice = `write ${typeWords(parameter.type)}${unit}${decimal}`;
  throw new InputError("--set", parameter.name, text, advice);
}

/** The value as a list of one, or an empty list if the text does not fit. */
function settingOf(type: ParameterType, text: string): readonly unknown[] {
  if (type.kind === "string") return [text];
  if (type.kind === "union") {
    const order = [...type.among].sort(
      (a, b) => Number(a.kind === "string") - Number(b.kind === "string"),
    );
    for (const each of order) {
      const found = settingOf(each, text);
      if (found.length > 0) return found;
    }
    return [];
  }
  if (type.kind === "literal" && String(type.value) === text.trim()) return [type.value];
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    value = undefined;
  }
  if (type.kind === "number" && /^[+.]?\d/.test(text.trim())) value = Number(text);
  return value !== undefined && fits(type, value) ? [value] : [];
}

function fits(type: ParameterType, value: unknown): boolean {
  switch (type.kind) {
    case "number":
      return typeof value === "number" && Number.isFinite(value);
    case "string":
    case "boolean":
      return typeof value === type.kind;
    case "null":
      return value === null;
    case "literal":
      return value === type.value;
    case "array":
      return Array.isArray(value) && value.every((item) => fits(type.item, item));
    case "union":
      return type.among.some((each) => fits(each, value));
    default:
      return true;
  }
}
