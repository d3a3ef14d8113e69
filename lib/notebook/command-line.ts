import { closestWord, InputError } from "../input/index.ts";

/** One option of a command. */
export interface OptionRule {
  /** Word for the value it takes; without it the option takes none. */
  readonly value?: string;
  /** May be given more than once. */
  readonly repeats?: boolean;
  readonly help: string;
}

/** What stands on a command line: paths and options. */
export interface CommandLine {
  readonly paths: readonly string[];
  /** Option → values, in the order given. */
  readonly options: ReadonlyMap<string, readonly string[]>;
}

/**
 * Reads the words after a command; `--name value` and `--name=value` are the same.
 *
 * @throws InputError for an option that the command does not have, or one without its value
 */
export function parseCommandLine(
  command: string,
  words: readonly string[],
  rules: Readonly<Record<string, OptionRule>>,
): CommandLine {
  const paths: string[] = [];
  const options = new Map<string, string[]>();
  const fail = (argument: string, value: unknown, advice: string) =>
    new InputError(`wetside ${command}`, argument, value, advice);
  for (let i = 0; i < words.length; i++) {
    const word = words[i] ?? "";
    if (!word.startsWith("-") || word === "-") {
      paths.push(word);
      continue;
    }
    const [name = "", attached] = /^--?([^=]*)(?:=(.*))?$/s.exec(word)?.slice(1) ?? [];
    const rule = rules[name];
    if (rule === undefined) {
      const near = closestWord(name, Object.keys(rules));
      const known = Object.keys(rules).map((each) => `--${each}`);
      const meant =
        near === undefined ? `its options are ${known.join(", ")}` : `did you mean --${near}?`;
      throw fail("option", word, meant);
    }
    if (rule.value === undefined && attached !== undefined)
      throw fail("option", word, "it takes no value");
    const next = rule.value === undefined ? "" : (attached ?? words[++i]);
    if (next === undefined)
      throw fail("option", word, `write a value after it: --${name} ${rule.value}`);
    const before = options.get(name) ?? [];
    if (before.length > 0 && rule.repeats !== true)
      throw fail("option", word, "it may be given only once");
    options.set(name, [...before, next]);
  }
  return { paths, options };
}

/** Refuses words that a command has no use for, before anything is done. */
export function requireNoMore(command: string, paths: readonly string[], most: number): void {
  const word = paths[most];
  if (word === undefined) return;
  const advice = `it takes ${most === 1 ? "one path" : `${most} paths`}; leave the others out`;
  throw new InputError(`wetside ${command}`, "path", word, advice);
}

/** The options of a command as lines of help. */
export function optionsHelp(rules: Readonly<Record<string, OptionRule>>): string {
  const names = Object.entries(rules).map(
    ([name, { value }]) => `--${name}${value ? ` ${value}` : ""}`,
  );
  const width = Math.max(...names.map((name) => name.length));
  return Object.values(rules)
    .map(({ help }, i) => `  ${(names[i] ?? "").padEnd(width)}  ${help}`)
    .join("\n");
}
