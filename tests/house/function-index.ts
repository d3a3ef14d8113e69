import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { publicFunctions, sourceFiles } from "./doc-examples.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** A public function with the room that gives it out, its file, and the first sentence about it. */
export interface IndexedFunction {
  readonly room: string;
  readonly name: string;
  readonly file: string;
  readonly sentence: string;
}

/** Every public function of the library, room by room in the order of the alphabet. */
export async function functionIndex(): Promise<readonly IndexedFunction[]> {
  const rooms = readdirSync(`${root}lib`).filter((room) =>
    existsSync(`${root}lib/${room}/index.ts`),
  );
  const found = await Promise.all(
    rooms.map(async (room) => {
      const names = Object.keys(await import(`../../lib/${room}/index.ts`));
      return sourceFiles(`${root}lib/${room}`)
        .flatMap((path) => publicFunctions(path, root))
        .filter(({ name }) => names.includes(name))
        .map(({ name, file, comment }) => ({ room, name, file, sentence: firstSentence(comment) }))
        .sort((a, b) => (a.name < b.name ? -1 : 1));
    }),
  );
  return found.flat();
}

/** The first sentence of a doc comment, on one line. */
function firstSentence(comment: string): string {
  const text = comment
    .replace(/^\/\*\*|\*\/$/g, "")
    .replace(/^\s*\*? ?/gm, "")
    .split(/\n\s*\n|\n@/)[0]
    ?.replace(/\s+/g, " ")
    .trim();
  return /^.*?[.:](?= [A-Z(]|$)/.exec(text ?? "")?.[0].replace(/:$/, ".") ?? text ?? "";
}

/** The page that lists them, as `npm run functions` writes it. */
export function functionPage(all: readonly IndexedFunction[]): string {
  const rooms = [...new Set(all.map(({ room }) => room))].map((room) => {
    const rows = all
      .filter((each) => each.room === room)
      .map(({ name, file, sentence }) => `| [\`${name}\`](../${file}) | ${cell(sentence)} |`);
    return [`## wetside/${room}`, "", "| function | what for |", "|---|---|", ...rows, ""].join(
      "\n",
    );
  });
  const head = [
    "# Every function, by room",
    "",
    `Written by \`npm run functions\` from the doc comments: ${all.length} public functions, each with the first sentence about it.`,
    "Behind each name is its file, with equation, units, ranges, errors, an example that the tests run, and the source.",
    "",
  ].join("\n");
  return [head, ...rooms].join("\n");
}

function cell(text: string): string {
  return text.replaceAll("|", "\\|");
}
