/**
 * Runs the module made of a notebook's cells, in a process of its own. Arguments: the module's
 * path. Everything that happens is written to file descriptor 3, one JSON object a line, at once,
 * so that nothing is lost when a cell ends the process or never ends.
 */
import { rmSync, writeSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { pathToFileURL } from "node:url";
import type { DisplayBundle } from "../figures/index.ts";
import { InputError } from "../input/index.ts";
import { displayBundle } from "./display.ts";
import { installHost } from "./host.ts";
import { missingFileAdvice } from "./missing-file.ts";
import type { Failure, RunEvent } from "./run-events.ts";

const EVENTS = 3;
const modulePath = process.argv[2] ?? "";
let failed = false;
let ended = false;
/** Displays that a cell began and did not wait for. */
let pending: Promise<unknown>[] = [];

function tell(event: RunEvent): void {
  let bytes = Buffer.from(`${JSON.stringify(event)}\n`);
  while (bytes.length > 0) {
    try {
      bytes = bytes.subarray(writeSync(EVENTS, bytes));
    } catch (error) {
      if ((error as { code?: string }).code !== "EAGAIN") throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 2);
    }
  }
}

function fail(error: unknown, way: Failure["way"]): void {
  if (failed) return;
  failed = true;
  const { name, message, stack } =
    error instanceof Error
      ? error
      : { name: "Error", message: `a cell threw ${String(error)}`, stack: "" };
  const kind = isInputError(error) ? "InputError" : name;
  tell({ type: "failed", failure: { name: kind, message, stack: stack ?? "", way } });
  leave(1);
}

/** True for an input error of any kind, also one of another copy of the library. */
function isInputError(error: unknown): boolean {
  for (let each = error; each instanceof Error; each = Object.getPrototypeOf(each)) {
    if (each.name === "InputError" || each.constructor.name === "InputError") return true;
  }
  return false;
}

const leave = process.exit.bind(process);
process.exit = (() => {
  throw new Error("a cell cannot end the process; throw an error to stop the notebook");
}) as typeof process.exit;

const capture = (name: "stdout" | "stderr") => {
  process[name].write = ((text: string | Uint8Array, ...rest: unknown[]) => {
    tell({
      type: "stream",
      name,
      text: typeof text === "string" ? text : Buffer.from(text).toString(),
    });
    const done = rest.find((each) => typeof each === "function");
    if (typeof done === "function") done();
    return true;
  }) as typeof process.stdout.write;
};

const runner = {
  async begin(cell: number): Promise<void> {
    await settle();
    tell({ type: "begin", cell });
  },
  async show(value: unknown): Promise<void> {
    const bundle = await displayBundle(value);
    await settle();
    if (bundle !== undefined) tell({ type: "result", data: bundle });
  },
  caught(error: unknown): void {
    if (error === NOT_THROWN) throw error;
    const { name, message } =
      error instanceof Error ? error : { name: "Error", message: String(error) };
    tell({ type: "caught", name, message });
  },
  async notThrown(): Promise<void> {
    await settle();
    fail(NOT_THROWN, "not-thrown");
  },
  async end(): Promise<void> {
    await settle();
    ended = true;
    tell({ type: "end" });
  },
};

const NOT_THROWN = new Error('this cell is tagged "raises-exception" but raised none');

async function settle(): Promise<void> {
  while (pending.length > 0) {
    const now = pending;
    pending = [];
    await Promise.all(now);
  }
}

installHost({
  show: (bundle: DisplayBundle) => tell({ type: "display", data: bundle }),
  async readBytes(path) {
    try {
      const bytes = await readFile(path);
      tell({ type: "read", path });
      return bytes;
    } catch (error) {
      throw new InputError("readText", "path", path, await missingFileAdvice(path, error));
    }
  },
  saveText: (name, text) => tell({ type: "save", name, text }),
  announce: (text) => tell({ type: "announce", text }),
  waitFor: (shown) => pending.push(shown),
});
(globalThis as { [key: symbol]: unknown })[Symbol.for("wetside.runner")] = runner;

Error.stackTraceLimit = 60;
process.on("uncaughtException", (error) => fail(error, "thrown"));
process.on("unhandledRejection", (error) => fail(error, "rejected"));
process.on("warning", ({ name, message }) => {
  if (!/^(Experimental|Deprecation)Warning$/.test(name)) {
    tell({ type: "stream", name: "stderr", text: `${name}: ${message}\n` });
  }
});
process.on("beforeExit", () => {
  if (!ended || failed) return;
  tell({ type: "done" });
  leave(0);
});
capture("stdout");
capture("stderr");

try {
  await import(pathToFileURL(modulePath).href);
} catch (error) {
  fail(error, "thrown");
} finally {
  rmSync(modulePath, { force: true });
}
