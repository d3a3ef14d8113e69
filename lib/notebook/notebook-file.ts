import { InputError } from "../input/index.ts";
import { pythonJson } from "./python-json.ts";

/** One output of a code cell, as nbformat 4.5 has it, with its texts joined. */
export type Output =
  | { output_type: "stream"; name: "stdout" | "stderr"; text: string }
  | { output_type: "display_data"; data: Bundle; metadata: Json }
  | { output_type: "execute_result"; data: Bundle; metadata: Json; execution_count: number }
  | { output_type: "error"; ename: string; evalue: string; traceback: string[] };

/** Media type → text or JSON. */
export type Bundle = { [mediaType: string]: unknown };
export type Json = { [key: string]: unknown };

/** A cell with its source as one text. */
export interface Cell {
  readonly cell_type: "markdown" | "code" | "raw";
  readonly id: string;
  readonly metadata: Json;
  readonly source: string;
  readonly execution_count?: number | null;
  readonly outputs?: readonly Output[];
  readonly attachments?: Json;
}

/** A notebook, nbformat 4.5. */
export interface Notebook {
  readonly cells: readonly Cell[];
  readonly metadata: Json;
  readonly nbformat: 4;
  readonly nbformat_minor: number;
}

/** The notebook in the text of an .ipynb file; texts that stand as lines are joined. */
export function parseNotebook(file: string, text: string): Notebook {
  const fail = (advice: string) => new InputError("notebook", "file", file, advice);
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw fail(`that is not a notebook: it is not JSON (${reason})`);
  }
  if (!isJson(raw) || !Array.isArray(raw.cells) || raw.nbformat !== 4) {
    throw fail("that is not a notebook of format 4; save it from Jupyter as .ipynb");
  }
  return {
    cells: raw.cells.map((cell, i) => parseCell(cell, i)),
    metadata: isJson(raw.metadata) ? raw.metadata : {},
    nbformat: 4,
    nbformat_minor: Math.max(5, Number(raw.nbformat_minor) || 0),
  };
}

function parseCell(raw: unknown, index: number): Cell {
  if (!isJson(raw)) throw new InputError("notebook", `cell ${index + 1}`, raw, "write an object");
  const { source, outputs, ...rest } = raw;
  const id = typeof raw.id === "string" ? raw.id : `cell-${String(index + 1).padStart(2, "0")}`;
  const cell = { ...rest, id, source: joined(source) } as Cell;
  return Array.isArray(outputs) ? { ...cell, outputs: outputs.map(parseOutput) } : cell;
}

function parseOutput(raw: unknown): Output {
  if (!isJson(raw)) throw new InputError("notebook", "output", raw, "write an object");
  const data = isJson(raw.data)
    ? Object.fromEntries(
        Object.entries(raw.data).map(([type, each]) => [type, parsedData(type, each)]),
      )
    : undefined;
  return {
    ...raw,
    ...("text" in raw ? { text: joined(raw.text) } : {}),
    ...(data === undefined ? {} : { data }),
  } as Output;
}

function parsedData(mediaType: string, value: unknown): unknown {
  return isJsonType(mediaType) ? value : joined(value);
}

function joined(text: unknown): string {
  return Array.isArray(text) ? text.join("") : typeof text === "string" ? text : "";
}

function isJson(value: unknown): value is Json {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** True for media types whose content is JSON and not text. */
export function isJsonType(mediaType: string): boolean {
  return mediaType === "application/json" || /^application\/.*\+json$/.test(mediaType);
}

/** The text of an .ipynb file, byte for byte as Jupyter writes it. */
export function notebookText(notebook: Notebook): string {
  return pythonJson(notebookJson(notebook));
}

/** The notebook as the JSON that goes into the file: texts as lists of lines. */
export function notebookJson(notebook: Notebook): Json {
  return { ...notebook, cells: notebook.cells.map(cellJson) };
}

function cellJson(cell: Cell): Json {
  const source = lines(cell.source);
  if (cell.cell_type !== "code") return { ...cell, source };
  const outputs = (cell.outputs ?? []).map(outputJson);
  return { ...cell, source, outputs, execution_count: cell.execution_count ?? null };
}

function outputJson(output: Output): Json {
  if (output.output_type === "stream") return { ...output, text: lines(output.text) };
  if (output.output_type === "error") return { ...output };
  const data = Object.entries(output.data).map(([type, value]) => {
    const text = !isJsonType(type) && typeof value === "string";
    return [type, text ? lines(value) : value] as const;
  });
  return { ...output, data: Object.fromEntries(data) };
}

/** Lines with their ends kept, cut where Python's `splitlines` cuts. */
function lines(text: string): string[] {
  if (text === "") return [];
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are line ends to Python
  return text.split(/(?<=[\n\v\f\x1c-\x1e\x85\u2028\u2029]|\r(?!\n))/);
}

/** Tags of a cell: `parameters`, `exercise`, `solution`, … */
export function tagsOf(cell: Cell): readonly string[] {
  const { tags } = cell.metadata;
  return Array.isArray(tags) ? tags.filter((tag) => typeof tag === "string") : [];
}
