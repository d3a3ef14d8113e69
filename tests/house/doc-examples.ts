import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative, sep } from "node:path";
import ts from "typescript";

/** One `@example` of a doc comment. */
export interface DocExample {
  readonly file: string;
  readonly line: number;
  readonly name: string;
  readonly code: string;
}

/** A public function, with or without example. */
export interface PublicFunction {
  readonly file: string;
  readonly name: string;
  readonly comment: string;
  readonly examples: readonly DocExample[];
}

export function sourceFiles(folder: string): string[] {
  return readdirSync(folder)
    .flatMap((name) => {
      const path = join(folder, name);
      return statSync(path).isDirectory() ? sourceFiles(path) : [path];
    })
    .filter((path) => path.endsWith(".ts") && !path.endsWith(".d.ts"))
    .sort();
}

/** Every exported function and class of a file, with its doc comment. */
export function publicFunctions(path: string, root: string): PublicFunction[] {
  const source = ts.createSourceFile(
    path,
    readFileSync(path, "utf8"),
    ts.ScriptTarget.ESNext,
    true,
  );
  const file = relative(root, path).split(sep).join("/");
  const found: PublicFunction[] = [];
  for (const statement of source.statements) {
    const named = exportedFunction(statement);
    if (!named) continue;
    const comments = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc);
    const comment = comments.map((each) => each.getText()).join("\n");
    const examples = ts
      .getJSDocTags(statement)
      .filter((tag) => tag.tagName.text === "example")
      .map((tag) => ({
        file,
        line: source.getLineAndCharacterOfPosition(tag.getStart()).line + 1,
        name: named,
        code: exampleCode(ts.getTextOfJSDocComment(tag.comment) ?? ""),
      }));
    found.push({ file, name: named, comment, examples });
  }
  return found;
}

function exportedFunction(statement: ts.Statement): string | undefined {
  const exported =
    ts.canHaveModifiers(statement) &&
    ts.getModifiers(statement)?.some((each) => each.kind === ts.SyntaxKind.ExportKeyword);
  if (!exported) return undefined;
  if (ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) {
    return statement.name?.text;
  }
  if (!ts.isVariableStatement(statement)) return undefined;
  const declaration = statement.declarationList.declarations[0];
  const isFunction = declaration?.initializer && ts.isArrowFunction(declaration.initializer);
  return isFunction && ts.isIdentifier(declaration.name) ? declaration.name.text : undefined;
}

/** The code of an example: without a fence, and without the prose paragraph that may follow it. */
function exampleCode(text: string): string {
  const fenced = /```\w*\n([\s\S]*?)```/.exec(text);
  if (fenced) return fenced[1] ?? "";
  return (text.split(/\n\s*\n(?=\s*(?:Sources?|See|Note)\b)/)[0] ?? "").trim();
}

export type Check = (actual: unknown, expectedText: string, line: string) => void;

/** Runs an example; every statement that ends in `// => value` is handed to `check`. */
export async function runExample(
  code: string,
  scope: Readonly<Record<string, unknown>>,
  check: Check,
): Promise<number> {
  const source = ts.createSourceFile("example.ts", code, ts.ScriptTarget.ESNext, true);
  let checked = 0;
  const body = source.statements.map((statement) => {
    const text = code.slice(statement.getFullStart(), statement.end);
    const rest = /^[^\n]*/.exec(code.slice(statement.end))?.[0] ?? "";
    const expected = /^\s*;?\s*\/\/ => (.*)$/.exec(rest)?.[1];
    if (expected === undefined) return text;
    if (!ts.isExpressionStatement(statement)) {
      throw new Error(`only an expression can end in "// =>": ${text.trim()}`);
    }
    checked++;
    const expression = statement.expression.getText();
    return `\n__check((${expression}), ${JSON.stringify(expected)}, ${JSON.stringify(expression)});`;
  });
  const script = ts.transpileModule(body.join("\n"), {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
  }).outputText;
  const names = Object.keys(scope).filter((name) => new RegExp(`\\b${name}\\b`).test(code));
  const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor;
  const run = new AsyncFunction("__check", ...names, script.replace(/^export \{\};?$/m, ""));
  await run(check, ...names.map((name) => scope[name]));
  return checked;
}

/** Says how `actual` differs from a literal as printed, or undefined if it agrees to its digits. */
export function difference(actual: unknown, literalText: string): string | undefined {
  const source = ts.createSourceFile("v.ts", `(${literalText})`, ts.ScriptTarget.ESNext, true);
  const statement = source.statements[0];
  if (!statement || !ts.isExpressionStatement(statement)) return `cannot read ${literalText}`;
  return compare(actual, statement.expression, "value");
}

function compare(actual: unknown, node: ts.Expression, path: string): string | undefined {
  if (ts.isParenthesizedExpression(node)) return compare(actual, node.expression, path);
  const number = numberText(node);
  if (number !== undefined) {
    const off = Math.abs(Number(actual) - Number(number));
    if (typeof actual === "number" && off <= halfLastPlace(number)) return undefined;
    return `${path}: printed ${number}, computed ${String(actual)}`;
  }
  if (ts.isStringLiteralLike(node)) {
    return actual === node.text
      ? undefined
      : `${path}: printed ${node.getText()}, computed ${JSON.stringify(actual)}`;
  }
  if (ts.isArrayLiteralExpression(node)) {
    if (!Array.isArray(actual) || actual.length !== node.elements.length) {
      return `${path}: printed ${node.getText()}, computed ${JSON.stringify(actual)}`;
    }
    return first(node.elements.map((each, i) => compare(actual[i], each, `${path}[${i}]`)));
  }
  if (ts.isObjectLiteralExpression(node)) {
    const object = actual as Record<string, unknown>;
    const names = node.properties.map(
      (each) => each.name?.getText().replace(/^["']|["']$/g, "") ?? "",
    );
    const extra = Object.keys(object ?? {}).filter((name) => !names.includes(name));
    if (extra.length > 0) return `${path}: computed also ${extra.join(", ")}`;
    return first(
      node.properties.map((each, i) =>
        ts.isPropertyAssignment(each)
          ? compare(object?.[names[i] ?? ""], each.initializer, `${path}.${names[i]}`)
          : `${path}: cannot read ${each.getText()}`,
      ),
    );
  }
  const text = node.getText();
  return String(actual) === text
    ? undefined
    : `${path}: printed ${text}, computed ${String(actual)}`;
}

function numberText(node: ts.Expression): string | undefined {
  if (ts.isNumericLiteral(node)) return node.getText();
  const negative = ts.isPrefixUnaryExpression(node) && ts.isNumericLiteral(node.operand);
  return negative ? node.getText() : undefined;
}

/** Half a unit in the last printed place, with room for the rounding of doubles. */
function halfLastPlace(text: string): number {
  const [mantissa = "", exponent = "0"] = text.toLowerCase().replaceAll("_", "").split("e");
  const decimals = mantissa.split(".")[1]?.length ?? 0;
  const whole = decimals === 0 && exponent === "0";
  const unit = 10 ** (Number(exponent) - decimals);
  return whole ? 1e-9 * Math.max(1, Math.abs(Number(text))) : 0.5000001 * unit;
}

function first(list: readonly (string | undefined)[]): string | undefined {
  return list.find((each) => each !== undefined);
}
