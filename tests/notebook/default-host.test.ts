import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { notebookHost } from "../../lib/notebook/default-host.ts";
import { readText } from "../../lib/notebook/read-text.ts";
import { saveText } from "../../lib/notebook/save.ts";
import { announce, show } from "../../lib/notebook/show.ts";

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "wetside-host-"));
});
afterEach(async () => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  await rm(folder, { recursive: true, force: true });
});

describe("cells without a runner", () => {
  it("print what they show in plain Node, once", async () => {
    const log = vi.spyOn(console, "log").mockImplementation(() => {});
    await show(1, "two");
    announce("film: run");
    expect(log.mock.calls).toEqual([["1"], ["two"], ["film: run"]]);
  });
  it("read files in plain Node, and turn back with the path when there is none", async () => {
    await writeFile(join(folder, "a.csv"), "R,G");
    expect(await readText(join(folder, "a.csv"))).toBe("R,G");
    await expect(readText(join(folder, "b.csv"))).rejects.toThrow(/readText: path is .*b.csv/);
  });
  it("show through the kernel in Jupyter", () => {
    const display = vi.fn(async () => {});
    vi.stubGlobal("Deno", { jupyter: { display } });
    void show(3);
    expect(display).toHaveBeenCalledWith({ "text/plain": "3" }, { raw: true });
  });
  it("survive Deno outside a kernel, where its display throws", () => {
    const log = vi.spyOn(console, "log").mockImplementation(() => {});
    vi.stubGlobal("Deno", {
      get jupyter() {
        throw new Error("only in a kernel");
      },
    });
    void show(3);
    expect(log).toHaveBeenCalledWith("3");
  });
  it("fetch what they read and offer what they save as a download in a page", async () => {
    const link = { href: "", download: "", click: vi.fn() };
    vi.stubGlobal("document", {
      baseURI: "https://example.org/pages/a.html",
      createElement: () => link,
    });
    const asked: string[] = [];
    vi.stubGlobal("fetch", async (address: URL) => {
      asked.push(address.href);
      return address.href.endsWith("gone.csv")
        ? new Response("", { status: 404 })
        : new Response("R,G");
    });
    expect(await readText("../data/a.csv")).toBe("R,G");
    expect(asked).toEqual(["https://example.org/data/a.csv"]);
    await expect(readText("gone.csv")).rejects.toThrow(/404/);
    saveText("verdict.txt", "run");
    expect(link.download).toBe("verdict.txt");
    expect(link.href).toMatch(/^blob:/);
    expect(link.click).toHaveBeenCalledOnce();
  });
  it("save into a folder out/ of their own in a kernel or in Node", async () => {
    const back = process.cwd();
    try {
      process.chdir(folder);
      notebookHost().saveText("a.txt", "text");
      expect(await readFile(join(folder, "out", "a.txt"), "utf8")).toBe("text");
    } finally {
      process.chdir(back);
    }
  });
});
