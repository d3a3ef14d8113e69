import { closestWord, InputError } from "../input/index.ts";
import { NotebookError } from "./cell-problem.ts";
import { CHECK_HELP, commandCheck } from "./command-check.ts";
import { commandMorning, MORNING_HELP } from "./command-morning.ts";
import { commandPage, PAGE_HELP } from "./command-page.ts";
import { commandRun, RUN_HELP } from "./command-run.ts";
import { commandStudent, STUDENT_HELP } from "./command-student.ts";
import { packageVersion } from "./installation.ts";
import { MissingPackageError } from "./optional-package.ts";
import type { Say } from "./terminal.ts";

type Command = (words: readonly string[], say: Say) => Promise<void>;

interface CommandRule {
  readonly act: Command;
  readonly help: string;
  /** What it does, for the list of commands. */
  readonly does: string;
}

const COMMANDS: Readonly<Record<string, CommandRule>> = {
  morning: { act: commandMorning, help: MORNING_HELP, does: "runs all notebooks, makes all pages" },
  run: { act: commandRun, help: RUN_HELP, does: "runs notebooks, on your own files with --set" },
  page: { act: commandPage, help: PAGE_HELP, does: "makes a page of each notebook" },
  check: { act: commandCheck, help: CHECK_HELP, does: "looks for faults without running" },
  student: { act: commandStudent, help: STUDENT_HELP, does: "makes copies without solutions" },
};

const HELP = `${Object.values(COMMANDS)
  .map(({ help, does }) => `${help.split("\n").slice(0, 1).join("")}\n    ${does}`)
  .join("\n")}

wetside COMMAND --help says more; wetside --version says which release this is.`;

/** Runs one command of the terminal. Returns the exit code: 0 done, 1 the work failed, 2 misuse. */
export async function main(words: readonly string[]): Promise<number> {
  const [name = "--help", ...rest] = words;
  const say = (line: string) => console.log(line);
  if (name === "--version") {
    say(packageVersion());
    return 0;
  }
  if (name === "--help" || name === "-h" || name === "help") {
    say(COMMANDS[rest[0] ?? ""]?.help ?? HELP);
    return 0;
  }
  const command = COMMANDS[name];
  try {
    if (command === undefined) throw unknownCommand(name);
    await command.act(rest, say);
    return 0;
  } catch (error) {
    return explain(error, rest.includes("--trace"));
  }
}

function unknownCommand(name: string): InputError {
  const names = Object.keys(COMMANDS);
  const near = closestWord(name, names);
  const meant = near === undefined ? "" : ` (did you mean ${near}?)`;
  return new InputError("wetside", "COMMAND", name, `the commands are ${names.join(", ")}${meant}`);
}

function explain(error: unknown, trace: boolean): number {
  if (error instanceof AggregateError) {
    for (const each of error.errors) explain(each, trace);
    return 1;
  }
  if (error instanceof NotebookError) {
    console.error(error.message);
    if (trace && error.trace) console.error(error.trace);
    return 1;
  }
  const known = error instanceof InputError || error instanceof MissingPackageError;
  if (known) console.error((error as Error).message);
  else console.error(error);
  return error instanceof InputError ? 2 : 1;
}
