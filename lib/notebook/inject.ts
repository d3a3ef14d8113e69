import { closestWord, InputError } from "../input/index.ts";
import { type Cell, type Notebook, tagsOf } from "./notebook-file.ts";
import type { Parameter, Parameters } from "./parameters.ts";
import { parseSetting } from "./setting.ts";

const TAG = "injected-parameters";

/**
 * The notebook with a cell of plain assignments after its `parameters` cell, tagged
 * `injected-parameters`; one from an earlier run is replaced.
 *
 * @param settings name → value as typed after `--set`
 * @param adapt lets a caller change a value (a path, for instance) once its parameter is known
 * @throws InputError for a name that is no parameter, or a value of the wrong type
 */
export function injectSettings(
  notebook: Notebook,
  { cell, parameters }: Parameters,
  settings: ReadonlyMap<string, string>,
  adapt: (parameter: Parameter, value: unknown) => unknown = (_, value) => value,
): Notebook {
  if (settings.size === 0) return notebook;
  const names = parameters.map(({ name }) => name);
  const assignments = [...settings].map(([name, text]) => {
    const parameter = parameters.find((each) => each.name === name);
    if (parameter === undefined) throw unknownName(name, names);
    const value = adapt(parameter, parseSetting(parameter, text));
    return `${name} = ${JSON.stringify(value)};`;
  });
  const injected: Cell = {
    cell_type: "code",
    id: TAG,
    metadata: { tags: [TAG] },
    source: assignments.join("\n"),
    outputs: [],
    execution_count: null,
  };
  const after = notebook.cells[cell?.index ?? -1];
  const cells = notebook.cells
    .filter((each) => !tagsOf(each).includes(TAG))
    .flatMap((each) => (each === after ? [each, injected] : [each]));
  return { ...notebook, cells };
}

function unknownName(name: string, names: readonly string[]): InputError {
  if (names.length === 0) {
    return new InputError("--set", "name", name, "this notebook has no parameters cell");
  }
  const near = closestWord(name, names);
  const meant = near === undefined ? "" : ` (did you mean ${near}?)`;
  return new InputError("--set", "name", name, `its parameters are ${names.join(", ")}${meant}`);
}
