import { nodes, type TreeNode } from "./syntax-tree.ts";

/** What values a parameter takes. */
export type ParameterType =
  | { readonly kind: "number" | "string" | "boolean" | "null" }
  | { readonly kind: "literal"; readonly value: string | number | boolean }
  | { readonly kind: "array"; readonly item: ParameterType }
  | { readonly kind: "union"; readonly among: readonly ParameterType[] }
  | { readonly kind: "other"; readonly text: string };

/** The type that an annotation stands for. */
export function typeOfAnnotation(source: string, node: TreeNode): ParameterType {
  const inner = (child: unknown) => typeOfAnnotation(source, child as TreeNode);
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
      return { kind: "other", text: source.slice(node.start, node.end) };
  }
}

/** The type of a value as written, where there is no annotation. */
export function typeOfValue(source: string, node: TreeNode): ParameterType {
  if (node.type === "UnaryExpression") return typeOfValue(source, node.argument as TreeNode);
  if (node.type === "TemplateLiteral") return { kind: "string" };
  if (node.type === "ArrayExpression") {
    const [first] = nodes(node.elements);
    if (first !== undefined) return { kind: "array", item: typeOfValue(source, first) };
  }
  const kind = typeof node.value;
  if (node.type === "Literal" && (kind === "number" || kind === "string" || kind === "boolean")) {
    return { kind };
  }
  return { kind: "other", text: source.slice(node.start, node.end) };
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
