import { readFileSync } from "node:fs";
import { relative, resolve, sep } from "node:path";
import type { Cell } from "./notebook-file.ts";

const PICTURES: Readonly<Record<string, string>> = {
  png: "image/png",
  jpg: "image/jpeg",
  jpeg: "image/jpeg",
  gif: "image/gif",
  svg: "image/svg+xml",
  webp: "image/webp",
};

/**
 * The address that a link or picture of a notebook has in its page: pictures are put into the
 * page; links to other notebooks lead to their pages, other relative links to the same files.
 *
 * @param notebookFolder where the notebook is
 * @param pageFolder where the page will be
 */
export function pageAddress(
  written: string,
  kind: "link" | "picture",
  cell: Cell,
  folders: { readonly notebookFolder: string; readonly pageFolder: string },
  fault: (message: string) => void,
): string {
  if (kind === "picture") return pictureAddress(written, cell, folders.notebookFolder, fault);
  if (/^([a-z]+:|#|\/)/i.test(written)) return written;
  const [path = "", anchor] = written.split("#");
  const end = anchor === undefined ? "" : `#${anchor}`;
  if (/^[^/]+\.ipynb$/.test(path)) return `${path.replace(/\.ipynb$/, ".html")}${end}`;
  const target = resolve(folders.notebookFolder, decodeURI(path));
  return `${encodeURI(relative(folders.pageFolder, target).split(sep).join("/"))}${end}`;
}

function pictureAddress(
  written: string,
  cell: Cell,
  folder: string,
  fault: (message: string) => void,
): string {
  if (written.startsWith("data:")) return written;
  const attached = /^attachment:(.+)$/.exec(written)?.[1];
  if (attached !== undefined) {
    const bundle = (cell.attachments?.[attached] ?? {}) as Readonly<Record<string, unknown>>;
    const [type, data] = Object.entries(bundle)[0] ?? [];
    if (type !== undefined) return `data:${type};base64,${String(data)}`;
  }
  const type = PICTURES[written.split(".").at(-1)?.toLowerCase() ?? ""];
  try {
    if (type === undefined) throw new Error("it is not a picture file of this folder");
    const bytes = readFileSync(resolve(folder, written));
    return `data:${type};base64,${bytes.toString("base64")}`;
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    fault(`the picture ${written} cannot be put into the page: ${reason}`);
    return "data:,";
  }
}
