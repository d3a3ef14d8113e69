import type { DisplayBundle } from "../figures/figure.ts";

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
}

/** Where a place leaves its host for the cells to find. */
export const HOST: symbol = Symbol.for("wetside.notebook-host");

/** The host of the place the cells run in, or `undefined` if the place has set none. */
export function installedHost(): NotebookHost | undefined {
  return (globalThis as { [key: symbol]: NotebookHost | undefined })[HOST];
}

/** Makes `host` the one all cells use from now on. */
export function installHost(host: NotebookHost): void {
  (globalThis as { [key: symbol]: NotebookHost | undefined })[HOST] = host;
}
