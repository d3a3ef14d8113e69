import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Metafile } from "esbuild";

/** The licences of everything bundled that others wrote; equal texts stand once. */
export async function licenceTexts(root: string, { inputs }: Metafile): Promise<string> {
  const folders = new Set<string>();
  for (const path of Object.keys(inputs)) {
    const folder = /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0];
    if (folder !== undefined) folders.add(folder);
  }
  const byText = new Map<string, string[]>();
  const add = (text: string, name: string) => byText.set(text, [...(byText.get(text) ?? []), name]);
  for (const folder of [...folders].sort()) await addPackage(join(root, folder), add);
  const schema = join(root, "lib", "notebook", "nbformat-4.5.schema.LICENSE");
  add(await readFile(schema, "utf8"), "nbformat (schema of the notebook format)");
  const parts = [...byText].map(([text, names]) => `${names.join("\n")}\n\n${text.trim()}\n`);
  return parts.join(`\n${"=".repeat(80)}\n\n`);
}

async function addPackage(
  folder: string,
  add: (text: string, name: string) => void,
): Promise<void> {
  const file = JSON.parse(await readFile(join(folder, "package.json"), "utf8")) as {
    readonly name: string;
    readonly version: string;
    readonly license?: string;
  };
  const names = (await readdir(folder)).filter((name) =>
    /^(licen[cs]e|notice|copying)/i.test(name),
  );
  const texts = await Promise.all(names.sort().map((name) => readFile(join(folder, name), "utf8")));
  const text = texts.length > 0 ? texts.join("\n\n") : `Licence: ${file.license ?? "not stated"}`;
  add(text, `${file.name} ${file.version}`);
}
