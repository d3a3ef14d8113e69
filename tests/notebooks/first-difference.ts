import { type Notebook, parseNotebook } from "../../lib/notebook/notebook-file.ts";

/** Where two notebook texts first differ, in words a reader can act on; undefined if nowhere. */
export function firstDifference(committed: string, now: string): string | undefined {
  if (committed === now) return undefined;
  const before = parseNotebook("committed", committed);
  const after = parseNotebook("now", now);
  const length = Math.max(before.cells.length, after.cells.length);
  for (let i = 0; i < length; i++) {
    const a = before.cells[i];
    const b = after.cells[i];
    if (JSON.stringify(a) === JSON.stringify(b)) continue;
    const number = b?.execution_count ?? a?.execution_count ?? "–";
    const source = (b ?? a)?.source.split("\n")[0]?.slice(0, 60) ?? "";
    const [was, is] = differingLines(text(before, i), text(after, i));
    return `cell ${number} (place ${i + 1}, “${source}”)\n  committed: ${was}\n  now:       ${is}`;
  }
  const [was, is] = differingLines(committed, now);
  return `the file's form\n  committed: ${was}\n  now:       ${is}`;
}

function text(notebook: Notebook, index: number): string {
  return JSON.stringify(notebook.cells[index] ?? null, null, 1).replaceAll("\\n", "\n");
}

function differingLines(a: string, b: string): readonly [string, string] {
  const left = a.split("\n");
  const right = b.split("\n");
  const at = left.findIndex((line, i) => line !== right[i]);
  const line = at < 0 ? left.length : at;
  const was = left[line] ?? "(no more lines)";
  const is = right[line] ?? "(no more lines)";
  let same = 0;
  while (same < was.length && was[same] === is[same]) same++;
  return [around(was, same), around(is, same)];
}

/** The part of a long line around a place in it. */
function around(line: string, place: number): string {
  const start = Math.max(0, place - 60);
  const end = place + 120;
  return `${start > 0 ? "…" : ""}${line.slice(start, end)}${end < line.length ? "…" : ""}`;
}
