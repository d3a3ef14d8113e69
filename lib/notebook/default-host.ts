import type { DisplayBundle } from "../figures/index.ts";
import { installedHost, type NotebookHost } from "./host.ts";

/** The place's own facilities, looked up by name so that nothing is imported that it may lack. */
interface Place {
  readonly Deno?: {
    readonly jupyter?: { display(value: unknown, options: { raw: boolean }): Promise<void> };
    readFile(path: string): Promise<Uint8Array>;
  };
  readonly process?: { getBuiltinModule?(name: string): unknown };
  readonly document?: {
    createElement(name: "a"): { href: string; download: string; click(): void };
    readonly baseURI: string;
  };
}

interface Files {
  readonly promises: { readFile(path: string): Promise<Uint8Array> };
  mkdirSync(path: string, options: { recursive: true }): void;
  writeFileSync(path: string, text: string): void;
}

/** Where files are saved in a kernel or in plain Node: below the current folder. */
const OUTPUT_FOLDER = "out";

/**
 * The host the cells use: the installed one if there is one, else Jupyter's Deno kernel, a
 * browser page or plain Node, whichever this is.
 */
export function notebookHost(): NotebookHost {
  return installedHost() ?? placeHost(globalThis as Place);
}

function placeHost(place: Place): NotebookHost {
  return {
    show: (bundle) => showIn(place, bundle),
    readBytes: (path) => readIn(place, path),
    saveText: (name, text) => saveIn(place, name, text),
    // What is announced is shown as well, and here that is the same place.
    announce: () => {},
  };
}

function showIn(place: Place, bundle: DisplayBundle): void {
  const kernel = kernelOf(place);
  if (kernel) void kernel.display(bundle, { raw: true });
  else if (typeof bundle["text/plain"] === "string") console.log(bundle["text/plain"]);
}

/** Deno has the kernel's functions in a kernel only, and throws elsewhere. */
function kernelOf(place: Place): NonNullable<Place["Deno"]>["jupyter"] {
  try {
    return place.Deno?.jupyter;
  } catch {
    return undefined;
  }
}

async function readIn(place: Place, path: string): Promise<Uint8Array> {
  if (place.document) {
    const answer = await fetch(new URL(path, place.document.baseURI));
    if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
    return new Uint8Array(await answer.arrayBuffer());
  }
  if (place.Deno) return place.Deno.readFile(path);
  return files(place).promises.readFile(path);
}

function saveIn(place: Place, name: string, text: string): void {
  if (place.document) {
    const link = place.document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "text/plain;charset=utf-8" }));
    link.download = name;
    link.click();
  } else {
    const { mkdirSync, writeFileSync } = files(place);
    mkdirSync(OUTPUT_FOLDER, { recursive: true });
    writeFileSync(`${OUTPUT_FOLDER}/${name}`, text);
  }
}

function files(place: Place): Files {
  const found = place.process?.getBuiltinModule?.("node:fs");
  if (found === undefined) throw new Error("this place has no files to read or write");
  return found as Files;
}
