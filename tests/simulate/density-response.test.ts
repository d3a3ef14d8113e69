import { describe, expect, it } from "vitest";
import {
  densityResponses,
  simulatedFaultIds,
  simulatedFaultKinds,
  simulatedLines,
} from "wetside/simulate";
import { densityCauses } from "../../lib/simulate/density-response.ts";
import { possibleFaults } from "./labs.ts";

// Of a density answer: a whole unit of a cause is far more than a lab meets.
const LARGEST_ANSWER = 3;

describe("the answers of density to cause", () => {
  for (const { process, reference } of simulatedLines) {
    it(`of ${process} cover every cause and no other`, () => {
      expect(Object.keys(densityResponses[process] ?? {}).sort()).toEqual(
        [...densityCauses].sort(),
      );
    });

    it(`of ${process} cover the patches of its strips, three finite numbers each`, () => {
      for (const [cause, { densities }] of Object.entries(densityResponses[process] ?? {})) {
        expect(Object.keys(densities).sort(), cause).toEqual(Object.keys(reference).sort());
        for (const three of Object.values(densities)) {
          expect(three, cause).toHaveLength(3);
          expect(
            three.every((v) => Math.abs(v) < LARGEST_ANSWER),
            cause,
          ).toBe(true);
        }
      }
    });

    it(`of ${process} say unit, source and how they were obtained`, () => {
      for (const { unit, source, howObtained } of Object.values(densityResponses[process] ?? {})) {
        expect(unit).toMatch(/^density per /);
        expect(source).toContain("size illustrative");
        expect(howObtained).toBe("illustrative");
      }
    });
  }
});

describe("the kinds of faults", () => {
  it("are seventeen, each once", () => {
    expect(simulatedFaultIds).toHaveLength(17);
    expect(new Set(simulatedFaultIds).size).toBe(17);
    expect(possibleFaults).toHaveLength(33);
  });

  it("have words, a meaning and unit of size, and another check that shows them", () => {
    for (const kind of simulatedFaultKinds) {
      for (const text of [kind.words, kind.sizeMeans, kind.unit, kind.showsIn]) {
        expect(text.trim(), kind.id).not.toBe("");
      }
    }
  });

  it("have a typical size of which 1.6 times is still allowed", () => {
    for (const { id, typicalSize, largestSize } of simulatedFaultKinds) {
      expect(typicalSize, id).toBeGreaterThan(0);
      expect(1.6 * typicalSize, id).toBeLessThanOrEqual(largestSize);
    }
  });
});
