import { spawnSync } from "node:child_process";
import { mkdir, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { notebookText } from "../../lib/notebook/notebook-file.ts";
import { draftNotebook, notebookFile, textOf } from "./fixture.ts";

const WETSIDE = fileURLToPath(new URL("../../lib/notebook/wetside.js", import.meta.url));
const SLOW = 300_000;

function wetside(folder: string, ...words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [WETSIDE, ...words], {
    cwd: folder,
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

const PARAMETERS = { source: "let days: number = 2; // d, 1 to 90", tags: ["parameters"] };
const WORK =
  'import { announce, saveJson } from "wetside/notebook";\nannounce("run for " + days + " d");\nsaveJson("verdict", { days });\ndays * 2';

describe("the command wetside", { timeout: SLOW }, () => {
  it("runs a notebook, writes its outputs into it, and changes nothing the second time", async () => {
    const { folder, file } = await notebookFile([PARAMETERS, WORK]);
    const first = wetside(folder, "run", "trial.ipynb");
    expect(first).toEqual({
      status: 0,
      stdout: "run for 2 d\nsaved out/trial/verdict.json\nwrote trial.ipynb\n",
      stderr: "",
    });
    const text = await textOf(file);
    expect(JSON.parse(text).cells[1].outputs.at(-1).data["text/plain"]).toEqual(["4"]);
    expect(wetside(folder, "run", "trial.ipynb").stdout).toContain("unchanged: trial.ipynb");
    expect(await textOf(file)).toBe(text);
  });
  it("goes on to the end, and quietly, when nobody reads its lines any more", async () => {
    const { folder } = await notebookFile([PARAMETERS, WORK]);
    const script = `"${process.execPath}" "${WETSIDE}" run trial.ipynb | true; echo "exit \${PIPESTATUS[0]}"`;
    // A shell warns of a locale that is not installed; that is no line of ours.
    const env = { ...process.env, LC_ALL: "C" };
    const out = spawnSync("bash", ["-c", script], { cwd: folder, encoding: "utf8", env });
    expect(out).toMatchObject({ stdout: "exit 0\n", stderr: "" });
    expect(JSON.parse(await textOf(join(folder, "out/trial/verdict.json")))).toEqual({ days: 2 });
  });
  it("leaves the notebook alone when a parameter is set, and says where the result went", async () => {
    const { folder, file } = await notebookFile([PARAMETERS, WORK]);
    const before = await textOf(file);
    const out = wetside(folder, "run", "trial.ipynb", "--set", "days=5");
    expect(out.stdout).toContain("wrote out/trial.ipynb");
    expect(await textOf(file)).toBe(before);
    expect(await textOf(join(folder, "out/trial.ipynb"))).toContain("days = 5;");
    expect(JSON.parse(await textOf(join(folder, "out/trial/verdict.json")))).toEqual({ days: 5 });
    wetside(folder, "run", "trial.ipynb", "--set=days=6", "--out", "mine/six.ipynb");
    expect(await textOf(join(folder, "mine/six.ipynb"))).toContain("days = 6;");
    expect(await readdir(join(folder, "mine"))).toEqual(["six", "six.ipynb"]);
  });
  it("stops at an error with exit code 1, the message alone, and no file written", async () => {
    const bad =
      'import { InputError } from "wetside";\nthrow new InputError("f", "a", 1, "write 2");';
    const { folder, file } = await notebookFile([
      'import { saveJson } from "wetside/notebook";\nsaveJson("verdict", 1);',
      bad,
    ]);
    const before = await textOf(file);
    const out = wetside(folder, "run", "trial.ipynb");
    expect(out.status).toBe(1);
    expect(out.stderr).toMatch(
      /^trial.ipynb stopped\n {2}cell 2 .*line 2\n.*\n {2}f: a is 1; write 2\n$/,
    );
    expect(out.stdout + out.stderr).not.toMatch(/\bat .*:\d+:\d+/);
    expect(await textOf(file)).toBe(before);
    expect(await readdir(folder)).toEqual(["trial.ipynb"]);
    expect(wetside(folder, "run", "trial.ipynb", "--trace").stderr).toMatch(/\bat .*:\d+:\d+/);
  });
  it("refuses misuse with exit code 2 and what to write instead", async () => {
    const { folder } = await notebookFile([PARAMETERS]);
    const refused = (words: readonly string[]) => {
      const { status, stderr } = wetside(folder, ...words);
      expect(status, words.join(" ")).toBe(2);
      return stderr;
    };
    expect(refused(["rum"])).toContain("did you mean run?");
    expect(refused(["run"])).toContain("write the path of a notebook");
    expect(refused(["run", "a.txt"])).toContain("a file that ends in .ipynb");
    expect(refused(["run", "b.ipynb"])).toContain("there is no such file");
    expect(refused(["run", "trial.ipynb", "--sett", "a=1"])).toContain("did you mean --set?");
    expect(refused(["run", "trial.ipynb", "--set", "day=1"])).toContain("did you mean days?");
    expect(refused(["run", "trial.ipynb", "--set", "days"])).toContain('write a name, "="');
    expect(refused(["run", "trial.ipynb", "--timeout", "soon"])).toContain("write seconds");
    expect(refused(["page", "nothing.ipynb"])).toContain("there is no such file");
    expect(refused(["morning", "nowhere"])).toContain("there is no such folder");
    expect(refused(["morning", ".", "trial.ipynb"])).toContain('path is "trial.ipynb"');
  });
  it("explains itself", async () => {
    const { folder } = await notebookFile([]);
    for (const name of ["run", "page", "morning", "check", "student"]) {
      expect(wetside(folder, "--help").stdout).toContain(`wetside ${name}`);
      const { status, stdout } = wetside(folder, name, "--help");
      expect(status).toBe(0);
      expect(stdout).toContain("--help");
      expect(wetside(folder, "help", name).stdout).toBe(stdout);
    }
    expect(wetside(folder, "--version").stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
  it("checks notebooks without running them", async () => {
    const { folder } = await notebookFile(["const a: string = 1;\na"]);
    const { status, stderr } = wetside(folder, "check", "trial.ipynb");
    expect(status).toBe(1);
    expect(stderr).toMatch(/cell 1 .*line 1\n.*\n.*TS2322/);
  });
  it("makes copies for a class and never over the notebook", async () => {
    const { folder } = await notebookFile(["1", { source: "2", tags: ["solution"] }]);
    expect(wetside(folder, "student", "trial.ipynb").stdout).toContain(
      "wrote out/students/trial.ipynb",
    );
    expect(JSON.parse(await textOf(join(folder, "out/students/trial.ipynb"))).cells).toHaveLength(
      1,
    );
    expect(wetside(folder, "student", "trial.ipynb", "--out", ".").status).toBe(2);
  });
  it("runs all notebooks of a folder in the morning, tells what they announce, and makes pages", async () => {
    const { folder } = await notebookFile([]);
    await mkdir(join(folder, "notebooks"));
    const put = (name: string, notebook: string) =>
      writeFile(join(folder, "notebooks", name), notebook);
    const title = "# May film go in?\n\nWho it is for: the lab chemist.";
    await put("a-call.ipynb", notebookText(draftNotebook([title, PARAMETERS, WORK])));
    await put(
      "b-evening.ipynb",
      notebookText(draftNotebook(["# What to mix?\n\nFor the hobbyist.", "1"])),
    );
    const verdict = 'import { announce } from "wetside/notebook";\nannounce("ACT now")';
    await put("d-verdict.ipynb", notebookText(draftNotebook(["# D", verdict])));
    const good = wetside(folder, "morning");
    expect(good.stderr).toBe("");
    expect(good.status).toBe(0);
    expect(good.stdout.indexOf("ACT now")).toBeLessThan(good.stdout.indexOf("run for 2 d"));
    expect(good.stdout).toMatch(/\d\/3 {2}a-call {2}\d+\.\d s\n/);
    expect(good.stdout).toContain("\na-call\n  run for 2 d\n  saved out/a-call/verdict.json\n");
    expect(good.stdout).toContain("out/pages/index.html");
    const index = await textOf(join(folder, "out/pages/index.html"));
    expect(index.indexOf("For the lab chemist")).toBeLessThan(index.indexOf('href="a-call.html"'));
    expect(index.indexOf("For the hobbyist")).toBeLessThan(index.indexOf('href="b-evening.html"'));
    expect(index).toContain(">May film go in?</a>");
    expect(await textOf(join(folder, "notebooks/a-call.ipynb"))).toContain(
      '"execution_count": null',
    );
    await put(
      "c-bad.ipynb",
      notebookText(draftNotebook(["# C", 'throw new Error("bath empty");'])),
    );
    const bad = wetside(folder, "morning");
    expect(bad.status).toBe(1);
    expect(bad.stdout).toContain("c-bad  stopped with an error");
    expect(bad.stderr).toContain("bath empty");
    expect(bad.stdout).toContain("3 pages");
  });
});
