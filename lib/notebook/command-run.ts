import { basename, dirname, join, resolve } from "node:path";
import { InputError } from "../input/index.ts";
import { type OptionRule, optionsHelp, parseCommandLine } from "./command-line.ts";
import { notebookText } from "./notebook-file.ts";
import { notebookName, type RunResult, runNotebook } from "./run-notebook.ts";
import { requireNotebooks, type Say, shownPath } from "./terminal.ts";
import { writeWhole } from "./write-file.ts";

const OPTIONS = {
  set: {
    value: "name=value",
    repeats: true,
    help: "change a parameter of the notebook; may be repeated",
  },
  out: {
    value: "FILE",
    help: "write the notebook with its outputs there (a folder for several notebooks)",
  },
  timeout: { value: "seconds", help: "stop a cell that takes longer (300)" },
  trace: { help: "print where in the code an error arose" },
  help: { help: "print this" },
} as const satisfies Record<string, OptionRule>;

export const RUN_HELP = `wetside run FILE… [--set name=value]… [--out FILE]

Runs notebooks from top to bottom and writes their outputs into them. With --set the notebook
itself stays as it is: the result goes to the folder out/, or to the file that --out names. A
notebook that stops with an error is left as it was.

${optionsHelp(OPTIONS)}`;

/** `wetside run`. */
export async function commandRun(words: readonly string[], say: Say): Promise<void> {
  const { paths, options } = parseCommandLine("run", words, OPTIONS);
  if (options.has("help")) return say(RUN_HELP);
  requireNotebooks("run", paths);
  const settings = settingsOf(options.get("set") ?? []);
  const out = options.get("out")?.[0];
  for (const file of paths) {
    const target = targetOf(file, out, settings.size > 0, paths.length > 1);
    const result = await runNotebook({
      file,
      settings,
      timeoutSeconds: secondsOf(options.get("timeout")?.[0]),
      onAnnounce: say,
    });
    await keepResult(result, target, say);
  }
}

/** Writes what a run made: the notebook, and the files it saved beside its name. */
export async function keepResult(
  result: RunResult,
  target: { readonly notebook: string; readonly files: string },
  say: Say,
): Promise<void> {
  for (const note of result.notes) say(`note: ${note}`);
  for (const [name, text] of result.saved) {
    await writeWhole(join(target.files, name), text);
    say(`saved ${shownPath(join(target.files, name))}`);
  }
  const changed = await writeWhole(target.notebook, notebookText(result.notebook));
  say(`${changed ? "wrote" : "unchanged:"} ${shownPath(target.notebook)}`);
}

function targetOf(file: string, out: string | undefined, changed: boolean, several: boolean) {
  const name = notebookName(file);
  if (out === undefined) {
    const notebook = changed ? resolve("out", `${name}.ipynb`) : resolve(file);
    if (changed && notebook === resolve(file)) {
      throw new InputError(
        "wetside run",
        "--out",
        undefined,
        "say where the result goes; it would replace the notebook itself",
      );
    }
    return { notebook, files: resolve("out", name) };
  }
  if (several || !out.endsWith(".ipynb")) {
    if (out.endsWith(".ipynb"))
      throw new InputError("wetside run", "--out", out, "name a folder for several notebooks");
    return { notebook: resolve(out, basename(file)), files: resolve(out, name) };
  }
  return { notebook: resolve(out), files: resolve(dirname(out), notebookName(out)) };
}

/** `name=value` texts as a map. */
export function settingsOf(texts: readonly string[]): ReadonlyMap<string, string> {
  const settings = new Map<string, string>();
  for (const text of texts) {
    const at = text.indexOf("=");
    if (at < 1)
      throw new InputError(
        "wetside run",
        "--set",
        text,
        'write a name, "=" and a value: --set days=30',
      );
    const name = text.slice(0, at).trim();
    if (settings.has(name))
      throw new InputError("wetside run", "--set", text, `${name} is set twice`);
    settings.set(name, text.slice(at + 1));
  }
  return settings;
}

function secondsOf(text: string | undefined): number {
  if (text === undefined) return 300;
  const seconds = Number(text);
  if (seconds > 0 && Number.isFinite(seconds)) return seconds;
  throw new InputError("wetside run", "--timeout", text, "write seconds greater than 0");
}
