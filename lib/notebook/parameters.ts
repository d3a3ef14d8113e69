import type { CellProblem } from "./cell-problem.ts";
import { type CodeCell, problemAt, problemOnLine } from "./code-cells.ts";
import { type ParameterType, typeOfAnnotation, typeOfValue } from "./parameter-type.ts";
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
    type:
      annotation === undefined
        ? typeOfValue(cell.source, init)
        : typeOfAnnotation(cell.source, annotation),
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
