import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { parseNotebook } from "../../lib/notebook/notebook-file.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const inFolder = (folder: string, ending: string) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith(ending) && !name.startsWith("."))
    .map((name) => `${folder}/${name}`);
const read = (file: string) => readFileSync(join(root, file), "utf8");

/** Words a reader sees, by file: pages, and the Markdown cells of notebooks. */
const texts = new Map([
  ...["README.md", "DEVELOPERS.md", ...inFolder("docs", ".md")].map(
    (file) => [file, read(file)] as const,
  ),
  ...inFolder("notebooks", ".ipynb").map((file) => {
    const cells = parseNotebook(file, read(file)).cells.filter((c) => c.cell_type === "markdown");
    return [file, cells.map(({ source }) => source).join("\n\n")] as const;
  }),
]);

/** The address of a heading, as pages of Markdown make it. */
function anchors(text: string): readonly string[] {
  return [...text.matchAll(/^#+ (.*)$/gm)].map(([, heading = ""]) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N}_\- ]/gu, "")
      .trim()
      .replaceAll(" ", "-"),
  );
}

describe.each([...texts])("%s", (file, text) => {
  it("links to files and headings that are there", () => {
    const links = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, link = ""]) => link);
    const dead = links.filter((link) => {
      if (/^\w+:/.test(link)) return false;
      const [path = "", heading] = link.split("#");
      const target = path === "" ? file : join(dirname(file), path).replaceAll("\\", "/");
      if (!existsSync(join(root, target))) return true;
      return heading !== undefined && !anchors(texts.get(target) ?? "").includes(heading);
    });
    expect(dead).toEqual([]);
  });

  it("names files of the repository that are there", () => {
    const named = [...text.matchAll(/`((?:\.\.\/)?(?:lib|data|docs|tests|notebooks)\/[\w./-]+)`/g)]
      .map(([, path = ""]) => path.replace("../", ""))
      .filter((path) => !/[A-Z]{4}/.test(path));
    expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it("names commands that package.json has", () => {
    const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };
    const named = [...text.matchAll(/npm run ([a-z][a-z-]*)/g)].map(([, name = ""]) => name);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});
