import type { DisplayBundle } from "../figures/index.ts";

/**
 * What a cell can ask of the place it runs in: the headless runner, a Jupyter kernel, a page in a
 * browser, or plain Node. A place puts its own host on `globalThis` under `HOST`; without one the
 * cells use what the place offers anyway (`default-host.ts`).
 */
export interface NotebookHost {
  /** Shows one bundle where the cell's output goes. */
  show(bundle: DisplayBundle): void;
  /** The bytes of a file; the path is relative to the notebook's folder. */
  readBytes(path: string): Promise<Uint8Array>;
  /** Keeps a text file for the reader: in the run's output folder, or as a download. */
  saveText(name: string, text: string): void;
  /** Says a line where the person who started the run sees it. */
  announce(text: string): void;
  /** Lets the place wait, before the next cell, for what a cell began to show. */
  waitFor?(shown: Promise<unknown>): void;
}

/** Where a place leaves its host for the cells to find. */
export const HOST: symbol = Symbol.for("wetside.notebook-host");

/** The host of the place the cells run in, or `undefined` if the place has set none. */
export function installedHost(): NotebookHost | undefined {
  return (globalThis as { [key: symbol]: NotebookHost | undefined })[HOST];
}

/**
 * Makes `host` the one that all cells use from now on.
 *
 * @param host what a cell can ask of the place it runs in
 * @returns a function that puts the former host back
 *
 * @example
 * const heard: string[] = [];
 * const restore = installHost({ show() {}, announce: (line) => heard.push(line), readBytes: async () => new Uint8Array(), saveText() {} });
 * announce("film line: run");
 * restore();
 * heard // => ["film line: run"]
 */
export function installHost(host: NotebookHost): () => void {
  const before = installedHost();
  set(host);
  return () => set(before);
}

function set(host: NotebookHost | undefined): void {
  (globalThis as { [key: symbol]: NotebookHost | undefined })[HOST] = host;
}
