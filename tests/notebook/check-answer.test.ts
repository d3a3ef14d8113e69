import { describe, expect, it } from "vitest";
import { answerCode, checkAnswer } from "wetside/notebook";
import { fnv1a } from "../../lib/notebook/answer-code.ts";

describe("the code of an answer", () => {
  it.each([
    // Test vectors published with the algorithm; quoted from memory, and what its definition gives.
    ["", "cbf29ce484222325"],
    ["a", "af63dc4c8601ec8c"],
    ["foobar", "85944171f73967e8"],
  ])("is FNV-1a of its bytes: %j", (text, hash) => {
    expect(fnv1a(text)).toBe(hash);
  });

  it("is the same for numbers that round to the same step, and differs for the next", () => {
    expect(answerCode("a", 0.0241, { step: 0.001 })).toBe(answerCode("a", 0.0239, { step: 0.001 }));
    expect(answerCode("a", 0.0241, { step: 0.001 })).not.toBe(
      answerCode("a", 0.0251, { step: 0.001 }),
    );
    expect(answerCode("a", -0.2)).toBe(answerCode("a", 0));
  });

  it("differs between exercises with the same answer", () => {
    expect(answerCode("a", 7)).not.toBe(answerCode("b", 7));
  });

  it("takes words whatever their case and blanks, and lists in their order", () => {
    expect(answerCode("a", " Too  Dim ")).toBe(answerCode("a", "too dim"));
    expect(answerCode("a", [3, 17])).not.toBe(answerCode("a", [17, 3]));
    expect(answerCode("a", [3, 17])).not.toBe(answerCode("a", 317));
  });

  it.each([
    [() => answerCode(" ", 1), "a name"],
    [() => answerCode("a", Number.NaN), "answer"],
    [() => answerCode("a", ""), "a number or a word"],
    [() => answerCode("a", []), "at least one"],
    [() => answerCode("a", 1, { step: 0 }), "step"],
  ])("refuses what is no answer (%#)", (make, message) => {
    expect(make).toThrow(message);
  });
});

describe("checking an answer", () => {
  const code = answerCode("days", 14.2, { step: 0.1 });

  it("says right, not yet with the hint, or not answered", () => {
    expect(checkAnswer("days", 14.2, { code, step: 0.1 }).state).toBe("right");
    expect(checkAnswer("days", 14.4, { code, step: 0.1, hint: "In days." })).toEqual({
      state: "not yet",
      message: "Not yet. In days.",
    });
    for (const open of [Number.NaN, "", [], [Number.NaN]]) {
      expect(checkAnswer("days", open, { code, step: 0.1 }).state).toBe("not answered");
    }
  });

  it("lets a number lie off by so many steps and no more", () => {
    const near = { code, step: 0.1, within: 2 };
    expect(checkAnswer("days", 14.0, near).state).toBe("right");
    expect(checkAnswer("days", 14.4, near).state).toBe("right");
    expect(checkAnswer("days", 13.9, near).state).toBe("not yet");
    expect(checkAnswer("days", 14.5, near).state).toBe("not yet");
  });

  it("takes a number divided by nothing for a wrong answer, not for an error", () => {
    const options = { code: answerCode("a", [1, 2]) };
    expect(checkAnswer("a", Number.POSITIVE_INFINITY, options).state).toBe("not yet");
    expect(checkAnswer("a", [1, Number.NEGATIVE_INFINITY], options).state).toBe("not yet");
  });

  it("shows its message in a notebook and stays plain data", () => {
    const checked = checkAnswer("days", 1, { code, step: 0.1 });
    const show = (checked as unknown as Record<symbol, () => unknown>)[
      Symbol.for("Jupyter.display")
    ];
    expect(show?.()).toEqual({ "text/plain": "Not yet." });
    expect(JSON.parse(JSON.stringify(checked))).toEqual(checked);
  });

  it("never carries the answer in its code", () => {
    expect(code).toMatch(/^[0-9a-f]{16}$/);
    expect(code).not.toContain("142");
  });

  it.each([
    [() => checkAnswer("days", 1, { code: "14.2" }), "16 digits"],
    [() => checkAnswer("days", 1, { code, step: -1 }), "step"],
    [() => checkAnswer("days", 1, { code, within: 99 }), "within"],
  ])("refuses a code that is none and numbers out of range (%#)", (make, message) => {
    expect(make).toThrow(message);
  });
});
