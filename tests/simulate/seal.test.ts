import { describe, expect, it } from "vitest";
import { InputError } from "wetside/input";
import { randomFault, revealFaults, simulatedFaultKinds, simulateLab } from "wetside/simulate";
import { seal, unseal } from "../../lib/simulate/seal.ts";
import { possibleFaults } from "./labs.ts";

describe("the sealed answer", () => {
  it("opens to what was sealed, whatever it is", () => {
    for (const value of [null, 0, "", [], {}, { words: "°C ≥ 0 🙂" }, "x".repeat(5000)]) {
      expect(unseal("test", seal(value))).toEqual(value);
    }
  });

  it("is as long for nothing as for a fault or three", () => {
    const fault = { kind: "wash-poor", line: "film", fromDay: 3 };
    const lengths = [[], [fault], [fault, { ...fault, line: "paper" }], "random" as const].map(
      (faults) => simulateLab({ seed: 1, days: 30, faults }).sealedAnswer.length,
    );
    expect(new Set(lengths).size).toBe(1);
  });

  it("says no fault, no word, no size in the JSON of the lab, in clear, in base 64 or in hex", () => {
    for (const { kind, line } of possibleFaults) {
      const faults = [{ kind, line, fromDay: 13, size: 0.2371 }];
      const text = JSON.stringify(simulateLab({ seed: 1, days: 20, faults })).toLowerCase();
      const { words = "", showsIn = "" } = simulatedFaultKinds.find(({ id }) => id === kind) ?? {};
      for (const secret of [kind, words, showsIn, "0.2371", "fromday"]) {
        const encoded = new TextEncoder().encode(secret);
        const hex = [...encoded].map((byte) => byte.toString(16).padStart(2, "0")).join("");
        for (const form of [secret, btoa(String.fromCharCode(...encoded)), hex]) {
          expect(text.includes(form.toLowerCase()), `${kind}: ${form}`).toBe(false);
        }
      }
    }
  });

  it("says no date: a lab with a fault has the keys, assumptions and dates of one without", () => {
    const outline = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(outline);
      if (typeof value !== "object" || value === null) return typeof value;
      const entries = Object.entries(value).map(([key, each]) => [key, outline(each)]);
      return Object.fromEntries(entries);
    };
    const clean = simulateLab({ seed: 1, days: 20 });
    for (const { kind, line } of possibleFaults) {
      const lab = simulateLab({ seed: 1, days: 20, faults: [{ kind, line, fromDay: 13 }] });
      // What was handled that day may stand in the work log; it does on ordinary days as well.
      expect(outline({ ...lab, work: [] }), kind).toEqual(outline({ ...clean, work: [] }));
      expect(lab.assumptions, kind).toEqual(clean.assumptions);
    }
  });

  it("is refused if it is missing or no sealed answer", () => {
    const open = (lab: unknown) => () => revealFaults(lab as { readonly sealedAnswer: string });
    for (const lab of [undefined, null, {}, { sealedAnswer: 7 }]) {
      expect(open(lab)).toThrow(InputError);
    }
    expect(open({})).toThrow(
      "revealFaults: sealedAnswer is missing; write the sealed answer of a simulated lab as it stands in its result",
    );
    for (const sealedAnswer of ["", "zz", "abc", "00ff"]) {
      expect(open({ sealedAnswer })).toThrow(InputError);
    }
  });

  it("is refused if a single digit of it was changed", () => {
    const { sealedAnswer } = simulateLab({ seed: 1, days: 30, faults: "random" });
    for (let i = 0; i < sealedAnswer.length; i++) {
      const digit = (Number.parseInt(sealedAnswer[i] ?? "", 16) ^ 1).toString(16);
      const changed = sealedAnswer.slice(0, i) + digit + sealedAnswer.slice(i + 1);
      expect(() => revealFaults({ sealedAnswer: changed }), `${i}`).toThrow(InputError);
    }
  });
});

describe("the revealed faults", () => {
  it("are none of a lab in order", () => {
    expect(revealFaults(simulateLab({ seed: 1, days: 5 }))).toEqual([]);
  });

  it("say what, since when, how much, and what gives it away", () => {
    const faults = [{ kind: "developer-too-warm", line: "paper", fromDay: 15, size: 0.7 }];
    expect(revealFaults(simulateLab({ seed: 1, days: 30, faults }))).toEqual([
      {
        kind: "developer-too-warm",
        line: "paper",
        fromDay: 15,
        untilDay: 30,
        size: 0.7,
        words: "the developer is warmer than its controller shows",
        fromDate: "2026-06-01",
        sizeWords: "0.7 °C (degrees too warm)",
        showsIn: "an independent thermometer held into the bath",
      },
    ]);
  });

  it("write shares in per cent", () => {
    const faults = [{ kind: "wash-poor", line: "film", fromDay: 3, size: 0.345 }];
    expect(revealFaults(simulateLab({ seed: 1, days: 5, faults }))[0]?.sizeWords).toBe(
      "34.5 % (share of its strength lost)",
    );
  });

  it("can be read from a lab that was saved", () => {
    const lab = simulateLab({ seed: 9, days: 40, faults: "random" });
    expect(revealFaults(JSON.parse(JSON.stringify(lab)))).toEqual(revealFaults(lab));
  });

  it("of a random lab are the one that randomFault draws", () => {
    for (let seed = 0; seed < 20; seed++) {
      const [found, ...more] = revealFaults(simulateLab({ seed, days: 30, faults: "random" }));
      expect(more).toEqual([]);
      expect(found).toMatchObject(randomFault(seed, { days: 30 }));
    }
  });
});
