import type { DisplayBundle } from "../figures/index.ts";
import { notebookHost } from "./default-host.ts";
import { DISPLAY, displayBundle } from "./display.ts";

/**
 * Shows several things in one cell, in the order given, each as it would be shown at a cell's end.
 *
 * @param values figures, tables, data frames, numbers, text, objects
 * @returns nothing to see; a promise that is fulfilled when all are shown
 *
 * @example
 * const seen: unknown[] = [];
 * const restore = installHost({ show: (bundle) => seen.push(bundle["text/plain"]), announce() {}, readBytes: async () => new Uint8Array(), saveText() {} });
 * await show(1, "two");
 * restore();
 * seen // => ["1", "two"]
 */
export function show(...values: readonly unknown[]): Promise<void> {
  const host = notebookHost();
  let waiting: Promise<void> | undefined;
  for (const value of values) {
    const bundle = displayBundle(value);
    const put = (ready: DisplayBundle | undefined) => {
      if (ready !== undefined) host.show(ready);
    };
    if (waiting !== undefined) waiting = waiting.then(async () => put(await bundle));
    else if (bundle instanceof Promise) waiting = bundle.then(put);
    else put(bundle);
  }
  if (waiting !== undefined) host.waitFor?.(waiting);
  return shownAlready(waiting ?? Promise.resolve());
}

/**
 * Shows a text written in Markdown, with numbers put in by the cell.
 *
 * @param text Markdown; formulas between dollars
 *
 * @example
 * const seen: unknown[] = [];
 * const restore = installHost({ show: (bundle) => seen.push(bundle["text/plain"]), announce() {}, readBytes: async () => new Uint8Array(), saveText() {} });
 * showMarkdown("The mean is **0.62**.");
 * restore();
 * seen // => ["The mean is **0.62**."]
 */
export function showMarkdown(text: string): void {
  notebookHost().show({ "text/markdown": text, "text/plain": text });
}

/**
 * Says one line where the person who started the run sees it (the terminal), and shows it in the
 * notebook too: the morning's verdict, for instance.
 *
 * @param text one line, or a few
 *
 * @example
 * const seen: unknown[] = [];
 * const restore = installHost({ show() {}, announce: (line) => seen.push(line), readBytes: async () => new Uint8Array(), saveText() {} });
 * announce("film line: run");
 * restore();
 * seen // => ["film line: run"]
 */
export function announce(text: string): void {
  notebookHost().show({ "text/plain": text });
  notebookHost().announce(text);
}

/** A promise that shows nothing when it stands at the end of a cell. */
function shownAlready(promise: Promise<void>): Promise<void> {
  return Object.defineProperty(promise, DISPLAY, { value: () => ({}) });
}
