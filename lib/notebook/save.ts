import { InputError } from "../input/index.ts";
import { notebookHost } from "./default-host.ts";

/**
 * Keeps a result as a JSON file, for the lab's own records: in the run's output folder, or as a
 * download in a page.
 *
 * @param name plain file name without folders: `"verdict.json"`; `.json` is added if missing
 * @param value anything JSON can hold; numbers must be finite
 * @throws InputError for a name with folders in it, or a value that JSON cannot hold
 *
 * @example
 * const kept: string[] = [];
 * const restore = installHost({ show() {}, announce() {}, readBytes: async () => new Uint8Array(), saveText: (name, text) => kept.push(name, text) });
 * saveJson("verdict", "run");
 * restore();
 * kept // => ["verdict.json", "\"run\"\n"]
 */
export function saveJson(name: string, value: unknown): void {
  const text = JSON.stringify(value, refuseLostValues, 2);
  if (text === undefined) {
    throw new InputError("saveJson", "value", value, "write a value that JSON can hold");
  }
  saveText(/\.json$/i.test(name) ? name : `${name}.json`, `${text}\n`);
}

function refuseLostValues(key: string, value: unknown): unknown {
  const lost =
    (typeof value === "number" && !Number.isFinite(value)) ||
    typeof value === "function" ||
    typeof value === "bigint" ||
    value instanceof Map ||
    value instanceof Set;
  if (!lost) return value;
  const where = key === "" ? "value" : `value's "${key}"`;
  const advice = "JSON cannot hold that; write a finite number, a text, a list or a plain object";
  throw new InputError("saveJson", where, String(value), advice);
}

/**
 * Keeps a text file: in the run's output folder, or as a download in a page.
 *
 * @param name plain file name without folders: `"timeline.txt"`
 * @param text what the file shall hold
 * @throws InputError for a name with folders in it
 *
 * @example
 * const kept: string[] = [];
 * const restore = installHost({ show() {}, announce() {}, readBytes: async () => new Uint8Array(), saveText: (name, text) => kept.push(name, text) });
 * saveText("timeline.txt", "0:00 developer in");
 * restore();
 * kept // => ["timeline.txt", "0:00 developer in"]
 */
export function saveText(name: string, text: string): void {
  if (typeof name !== "string" || !/^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u.test(name)) {
    const advice = 'write a plain file name of letters, digits, ".", "-" and "_": "verdict.json"';
    throw new InputError("saveText", "name", name, advice);
  }
  if (typeof text !== "string") {
    throw new InputError("saveText", "text", text, "write a text, or use saveJson for data");
  }
  notebookHost().saveText(name, text);
}
