import { describe, expect, it } from "vitest";
import { InputError } from "wetside/input";
import { revealFaults, simulateLab } from "wetside/simulate";

const sound = { kind: "bleach-weak", line: "film", fromDay: 3 };
const withFaults = (...faults: readonly unknown[]) =>
  simulateLab({ seed: 1, days: 30, faults: faults as readonly (typeof sound)[] });

const refused: readonly (readonly [words: string, fault: unknown, message: string])[] = [
  ["nothing", null, "faults[0] is null; write an object with kind, line, fromDay, size, untilDay"],
  ["a bare word", "bleach-weak", 'faults[0] is "bleach-weak"; write an object with kind, line,'],
  [
    "an unknown kind, and proposes the closest",
    { ...sound, kind: "bleach-week" },
    '(did you mean "bleach-weak"?)',
  ],
  [
    "a kind that is nothing like one, and lists all",
    { ...sound, kind: "gremlins" },
    '"densitometer-at-fault", "strip-mishandled"',
  ],
  [
    "an unknown line",
    { ...sound, line: "slides" },
    'faults[0].line is "slides"; write one of "film", "paper"',
  ],
  ["a missing moment", { kind: "bleach-weak", line: "film" }, "faults[0].fromDay is missing"],
  ["a moment before the first day", { ...sound, fromDay: -1 }, "faults[0].fromDay is -1"],
  [
    "a moment after the last day",
    { ...sound, fromDay: 30 },
    "write a whole number at least 0 and at most 29 (0 is the first of 30 days, 29 the last)",
  ],
  ["a moment within a day", { ...sound, fromDay: 2.5 }, "faults[0].fromDay is 2.5"],
  ["an end before the beginning", { ...sound, untilDay: 2 }, "faults[0].untilDay is 2"],
  [
    "an end on the day it begins",
    { ...sound, untilDay: 3 },
    "write a whole number greater than 3 and at most 30 (the day on which it is mended; left out, the fault stays to the end)",
  ],
  ["an end after the last day", { ...sound, untilDay: 31 }, "faults[0].untilDay is 31"],
  ["no size", { ...sound, size: 0 }, "faults[0].size is 0; write a finite number greater than 0"],
  [
    "a negative size, and says what the size means",
    { ...sound, size: -0.2 },
    "(bleach-weak: share of strength lost; the kind already says in which direction)",
  ],
  ["a size that is no number", { ...sound, size: Number.NaN }, "faults[0].size is NaN"],
  [
    "a size that no lab would meet",
    { ...sound, kind: "developer-too-warm", size: 20 },
    "write a finite number greater than 0 °C and at most 4 °C",
  ],
  [
    "a word written wrong, which would otherwise count as left out",
    { ...sound, magnitude: 0.2 },
    'a key of faults[0] is "magnitude"; its keys are kind, line, fromDay, size, untilDay',
  ],
  [
    "a printer on the film line",
    { ...sound, kind: "printer-at-fault" },
    'faults[0].line is "film"; write the line that makes prints',
  ],
];

describe("a fault of a simulated lab", () => {
  for (const [words, fault, message] of refused) {
    it(`refuses ${words}`, () => {
      expect(() => withFaults(fault)).toThrow(InputError);
      expect(() => withFaults(fault)).toThrow(message);
    });
  }

  it("is named by its place in the list", () => {
    expect(() => withFaults(sound, { ...sound, line: "papre" })).toThrow("faults[1].line");
  });

  it("may not stand twice at once on one line: pumps would run backwards", () => {
    const pump = { kind: "under-replenished", line: "film", fromDay: 3, size: 0.8 };
    expect(() => withFaults(pump, { ...pump, fromDay: 5 })).toThrow(
      'faults[1] is "under-replenished from day 5"; faults[0] is of the same kind and stands on that line at the same time; write one fault of the whole size, or days that do not overlap',
    );
  });

  it("may come back after it was mended, on the very day", () => {
    const lab = withFaults({ ...sound, untilDay: 9 }, { ...sound, fromDay: 9 });
    expect(revealFaults(lab).map(({ fromDay, untilDay }) => [fromDay, untilDay])).toEqual([
      [3, 9],
      [9, 30],
    ]);
  });

  it("may stand on both lines at once, and beside one of another kind", () => {
    const lab = withFaults(sound, { ...sound, line: "paper" }, { ...sound, kind: "wash-poor" });
    expect(revealFaults(lab)).toHaveLength(3);
  });

  it("is over with the strip that was mishandled, which may happen again next day", () => {
    const strip = { kind: "strip-mishandled", line: "film", fromDay: 3 };
    const [first, second] = revealFaults(withFaults(strip, { ...strip, fromDay: 4 }));
    expect([first?.untilDay, second?.untilDay]).toEqual([4, 5]);
  });

  it("stays to the end and has its typical size if nothing else is said", () => {
    expect(revealFaults(withFaults(sound))[0]).toMatchObject({ untilDay: 30, size: 0.35 });
  });
});
