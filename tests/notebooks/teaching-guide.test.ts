import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkAnswer } from "wetside/notebook";
import { revealFaults, simulatedLines, simulateLab } from "wetside/simulate";
import { parseNotebook, tagsOf } from "../../lib/notebook/notebook-file.ts";

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const guide = read("docs/teaching-guide.md");

/** Worked answers under a heading: what is printed bold in each numbered point. */
function answersUnder(heading: string): readonly string[] {
  const section = guide.split(`### ${heading}\n`)[1]?.split(/\n##/)[0] ?? "";
  return [...section.matchAll(/^\d+\. \*\*(.+?)\*\*/gm)].map((match) => match[1] ?? "");
}

function notebook(name: string) {
  const file = `notebooks/${name}.ipynb`;
  return parseNotebook(file, read(file));
}

/** A number with thousands commas and a true minus, or the words themselves in lower case. */
function answerIn(words: string): number | string {
  const found = /[−-]?\d[\d,]*(\.\d+)?/.exec(words)?.[0];
  return found === undefined
    ? words.toLowerCase()
    : Number(found.replaceAll(",", "").replace("−", "-"));
}

interface Exercise {
  readonly exercise: string;
  readonly code: string;
  readonly step: number;
  readonly within: number;
}

/** The checks of a notebook, as its cells ask them. */
function exercisesOf(name: string): readonly Exercise[] {
  const cells = notebook(name).cells.filter((cell) => !tagsOf(cell).includes("solution"));
  const call = /checkAnswer\("([^"]+)",[^{]*\{([\s\S]*?)\}\)/g;
  return cells.flatMap(({ source }) =>
    [...source.matchAll(call)].map(([, exercise = "", options = ""]) => ({
      exercise,
      code: /code: "([0-9a-f]{16})"/.exec(options)?.[1] ?? "",
      step: Number(/step: ([\d.]+)/.exec(options)?.[1] ?? 1),
      within: Number(/within: (\d+)/.exec(options)?.[1] ?? 0),
    })),
  );
}

const checkedNotebooks = [
  ["Reading a control chart", "reading-a-control-chart", 5],
  ["Which chart finds it first", "which-chart-finds-it-first", 5],
  ["Remakes and gauge", "remakes-and-gauge", 5],
  ["Find the fault", "find-the-fault", 3],
] as const;

describe("the teaching guide", () => {
  it.each(checkedNotebooks)("gives the right answers to %s", (heading, name, count) => {
    const answers = answersUnder(heading);
    const exercises = exercisesOf(name);
    expect(answers).toHaveLength(count);
    expect(exercises).toHaveLength(count);
    const states = exercises.map(({ exercise, ...options }, i) => {
      return checkAnswer(exercise, answerIn(answers[i] ?? ""), options).state;
    });
    expect(states).toEqual(exercises.map(() => "right"));
  });
  it("gives the answers of What a degree costs as its solutions print them", () => {
    const solutions = notebook("what-a-degree-costs").cells.filter((cell) =>
      tagsOf(cell).includes("solution"),
    );
    const answers = answersUnder("What a degree costs");
    expect(answers).toHaveLength(solutions.length);
    answers.forEach((answer, i) => {
      const number = /[\d.]+/.exec(answer)?.[0] ?? "none";
      expect(JSON.stringify(solutions[i])).toContain(number);
    });
  });
  it("names the faults hidden in the labs of the notebook", () => {
    const rows = [...guide.matchAll(/^\| \d \| (\d+) \| (film|paper) \| ([a-z-]+) \|$/gm)];
    const seeds = /classSeeds: number\[\] = \[([\d, ]+)\]/.exec(
      notebook("find-the-fault").cells.find((cell) => tagsOf(cell).includes("parameters"))
        ?.source ?? "",
    );
    expect(rows.map(([, seed]) => seed)).toEqual(seeds?.[1]?.split(", "));
    for (const [, seed, line, fault] of rows) {
      const lines = simulatedLines.filter(({ id }) => id === line);
      const lab = simulateLab({ seed: Number(seed), days: 45, lines, faults: "random" });
      expect(revealFaults(lab)[0]?.kind).toBe(fault);
    }
  });
  it("divides the notebooks at headings that they have", () => {
    const rows = [...guide.matchAll(/^\| (\d+) \| (.+?) \| .+ \|$/gm)].filter(([, n]) => n);
    const lessons = rows.filter(([, , where]) => / (to|from) \*/.test(where ?? ""));
    expect(lessons.length).toBeGreaterThan(6);
    let name = "";
    for (const [, , where = ""] of lessons) {
      name = /notebooks\/([a-z-]+)\.ipynb/.exec(where)?.[1] ?? name;
      const heading = /\*([^*]+)\*/.exec(where)?.[1] ?? "";
      const headings = notebook(name).cells.flatMap(({ source }) => source.split("\n"));
      expect(headings).toContain(`## ${heading}`);
    }
  });
});
