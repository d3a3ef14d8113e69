import { spawn } from "node:child_process";
import { rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { Readable } from "node:stream";
import { pathToFileURL } from "node:url";
import { type CellModule, runningModule } from "./cell-module.ts";
import type { CodeCell } from "./code-cells.ts";
import { IN_SOURCES, packageFile, packageResolver } from "./installation.ts";
import type { Failure, RunEvent } from "./run-events.ts";

/** Everything a run told, and how it ended. */
export interface CellsRun {
  readonly cells: readonly CodeCell[];
  readonly module: CellModule;
  readonly modulePath: string;
  readonly events: readonly RunEvent[];
  readonly failure:
    | (Omit<Failure, "way"> & { readonly way: Failure["way"] | "stopped" })
    | undefined;
}

/** Runs the cells in a process of its own whose folder is the notebook's. */
export async function runCells(
  notebookPath: string,
  cells: readonly CodeCell[],
  timeoutSeconds: number,
  onAnnounce: (text: string) => void = () => {},
): Promise<CellsRun> {
  const folder = dirname(notebookPath);
  const module = runningModule(cells, packageResolver(folder));
  const unique = `${process.pid}-${Math.random().toString(36).slice(2, 8)}`;
  const modulePath = join(folder, `.wetside-run-${unique}.mts`);
  const tsx = pathToFileURL(createRequire(import.meta.url).resolve("tsx")).href;
  const entry = packageFile(IN_SOURCES ? "cell-process.ts" : "cell-process.js");
  const conditions = IN_SOURCES ? ["--conditions=wetside-source"] : [];
  const args = ["--no-warnings", ...conditions, "--import", tsx, entry, modulePath];
  await writeFile(modulePath, module.text);
  try {
    const { events, failure } = await listen(args, folder, timeoutSeconds, onAnnounce);
    return { cells, module, modulePath, events, failure };
  } finally {
    await rm(modulePath, { force: true });
  }
}

function listen(
  args: readonly string[],
  folder: string,
  timeoutSeconds: number,
  onAnnounce: (text: string) => void,
): Promise<Pick<CellsRun, "events" | "failure">> {
  return new Promise((done, reject) => {
    const child = spawn(process.execPath, args, {
      cwd: folder,
      env: cellEnvironment(),
      stdio: ["ignore", "pipe", "pipe", "pipe"],
    });
    const events: RunEvent[] = [];
    let rest = "";
    let stray = "";
    let stopped: string | undefined;
    const timer = setTimeout(stop, timeoutSeconds * 1000);
    function stop(): void {
      stopped = `it had not ended after ${timeoutSeconds} s and was stopped; look for a loop without an end, or allow more with --timeout`;
      child.kill("SIGKILL");
    }
    const told = child.stdio[3] as Readable;
    told.setEncoding("utf8").on("data", (chunk: string) => {
      const lines = (rest + chunk).split("\n");
      rest = lines.pop() ?? "";
      for (const line of lines) {
        const event = JSON.parse(line) as RunEvent;
        events.push(event);
        if (event.type === "begin" || event.type === "end") timer.refresh();
        if (event.type === "announce") onAnnounce(event.text);
      }
    });
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding("utf8").on("data", (text: string) => {
        stray += text;
      });
    }
    child.on("error", reject);
    child.on("close", (code, signal) => {
      clearTimeout(timer);
      done({ events, failure: failureOf(events, stopped, code, signal, stray) });
    });
  });
}

function failureOf(
  events: readonly RunEvent[],
  stopped: string | undefined,
  code: number | null,
  signal: string | null,
  stray: string,
): CellsRun["failure"] {
  const told = events.find((each) => each.type === "failed");
  if (told?.type === "failed") return told.failure;
  if (stopped === undefined && events.at(-1)?.type === "done") return undefined;
  const waiting = "it waits for something that never comes (an await whose promise is never kept)";
  const memory = "it used more memory than there is";
  const ended =
    signal === "SIGABRT" || code === 134
      ? memory
      : `its process ended (${signal ?? `code ${code}`})`;
  const message = stopped ?? (code === 13 ? waiting : [ended, stray.trim()].join("\n").trim());
  return { name: "Error", message, stack: stray, way: "stopped" };
}

/** The same time zone, language and plain text on every machine. */
function cellEnvironment(): NodeJS.ProcessEnv {
  const { FORCE_COLOR, NODE_OPTIONS, NODE_V8_COVERAGE, ...kept } = process.env;
  return { ...kept, TZ: "UTC", LANG: "C.UTF-8", LC_ALL: "C.UTF-8", NO_COLOR: "1" };
}
