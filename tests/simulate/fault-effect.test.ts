import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { InputError } from "wetside/input";
import { simulatedFaultEffect, simulatedFaultIds, simulatedFaultKinds } from "wetside/simulate";
import { inARow, possibleFaults, processOf } from "./labs.ts";

// Sums of a dozen products in doubles.
const ROUNDING = 1e-12;

interface PublishedDirection {
  readonly id: string;
  readonly quantity: string;
  readonly published: string;
  readonly inputs: { readonly fault: string; readonly parameter: string };
}

function published(slug: string): readonly PublishedDirection[] {
  const url = new URL(`../../data/published/${slug}.json`, import.meta.url);
  const { checks } = JSON.parse(readFileSync(url, "utf8")) as { checks: PublishedDirection[] };
  // Faults of another table that the simulated lab does not have: agitation, starter.
  return checks.filter(({ inputs }) => simulatedFaultIds.includes(inputs.fault));
}

/** A parameter of a control strip in red, green, blue. */
function parameter(process: string, kind: string, name: string, size?: number): readonly number[] {
  const patches = simulatedFaultEffect(process, kind, size);
  const of = (patch: string) => {
    const three = patches[patch];
    if (three === undefined) throw new Error(`${process} has no ${patch}`);
    return inARow(three);
  };
  if (name !== "hdLessLd") return of(name);
  return of("hd").map((hd, at) => hd - (of("ld")[at] ?? 0));
}

function allPatches(process: string, kind: string, size?: number): readonly number[] {
  return Object.values(simulatedFaultEffect(process, kind, size)).flatMap(inARow);
}

function sign(values: readonly number[]): string {
  if (values.every((v) => v > 0)) return "+";
  return values.every((v) => v < 0) ? "-" : "both ways";
}

function typical(kind: string): number {
  return simulatedFaultKinds.find(({ id }) => id === kind)?.typicalSize ?? Number.NaN;
}

describe("the effect of a fault on a strip", () => {
  it("is refused for an unknown process, with those there are", () => {
    expect(() => simulatedFaultEffect("reversal", "bleach-weak")).toThrow(
      'process is "reversal"; write one of "colour-negative", "colour-paper"',
    );
    expect(() => simulatedFaultEffect("toString", "bleach-weak")).toThrow(InputError);
  });

  it("is refused for an unknown kind, with the closest", () => {
    expect(() => simulatedFaultEffect("colour-paper", "fixer-exausted")).toThrow(
      '(did you mean "fixer-exhausted"?)',
    );
  });

  it("is refused for a size of 0, below 0, too large or no number", () => {
    for (const size of [0, -0.1, 0.91, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => simulatedFaultEffect("colour-paper", "wash-poor", size)).toThrow(
        `size is ${size}; write a finite number greater than 0 and at most 0.9 (wash-poor: share of its strength lost`,
      );
    }
  });

  for (const [process, slug] of [
    ["colour-negative", "kodak-cis-254-fault-directions"],
    ["colour-paper", "us-army-ss0514-fault-directions"],
  ] as const) {
    for (const { quantity, published: direction, inputs } of published(slug)) {
      it(`goes the way that is printed for ${process}: ${quantity}`, () => {
        expect(sign(parameter(process, inputs.fault, inputs.parameter))).toBe(direction);
      });
    }
  }

  it("is held to printed directions of more than twenty", () => {
    const slugs = ["kodak-cis-254-fault-directions", "us-army-ss0514-fault-directions"];
    expect(slugs.flatMap(published).length).toBeGreaterThan(20);
  });

  for (const process of ["colour-negative", "colour-paper"]) {
    it(`leaves ${process} most silver where there was most when the bleach is weak`, () => {
      expect(sign(allPatches(process, "bleach-weak"))).toBe("+");
      const at = (name: string) => Math.max(...parameter(process, "bleach-weak", name));
      expect(at("dMax")).toBeGreaterThan(at("hd"));
      expect(at("hd")).toBeGreaterThan(at("ld"));
      expect(at("ld")).toBeGreaterThan(at("dMin"));
    });

    it(`stains ${process} blue most, and the clear most, when the fixer is exhausted`, () => {
      const [red = 0, green = 0, blue = 0] = parameter(process, "fixer-exhausted", "dMin");
      expect(blue).toBeGreaterThan(green);
      expect(green).toBeGreaterThan(red);
      expect(red).toBeGreaterThan(0);
      expect(sign(parameter(process, "fixer-exhausted", "hdLessLd"))).toBe("-");
    });

    it(`stains all patches of ${process} alike, blue most, when the wash is poor`, () => {
      const [red = 0, green = 0, blue = 0] = parameter(process, "wash-poor", "dMin");
      expect(blue).toBeGreaterThan(green);
      expect(green).toBeGreaterThan(red);
      for (const patch of ["ld", "hd", "dMax"]) {
        expect(parameter(process, "wash-poor", patch), patch).toEqual([red, green, blue]);
      }
    });

    it(`adds the same to every patch of ${process} when the densitometer's zero is off`, () => {
      expect(allPatches(process, "densitometer-at-fault", 0.07)).toEqual(
        allPatches(process, "densitometer-at-fault", 0.07).map(() => 0.07),
      );
    });

    it(`is none on strips of ${process} when the printer is off`, () => {
      expect(allPatches(process, "printer-at-fault").every((v) => v === 0)).toBe(true);
    });

    it(`stains the clear of ${process} when the developer is oxidised`, () => {
      expect(sign(parameter(process, "developer-oxidised", "dMin"))).toBe("+");
    });
  }

  it("flattens a film strip that saw light, and steepens a paper strip that was read wet", () => {
    expect(sign(parameter("colour-negative", "strip-mishandled", "hdLessLd"))).toBe("-");
    expect(sign(parameter("colour-paper", "strip-mishandled", "hdLessLd"))).toBe("+");
  });

  for (const { kind, line } of possibleFaults.filter((f) => f.kind !== "printer-at-fault")) {
    it(`grows with the size of ${kind} on ${line}, and starts from nothing`, () => {
      const largest = (size: number) =>
        Math.max(...allPatches(processOf[line], kind, size).map(Math.abs));
      const size = typical(kind);
      const rising = [1e-6, size / 2, size, Math.min(2 * size, largestSize(kind))].map(largest);
      expect(rising[0]).toBeLessThan(1e-4);
      for (let i = 1; i < rising.length; i++) {
        expect(rising[i]).toBeGreaterThan(rising[i - 1] ?? Number.NaN);
      }
    });
  }

  // Those that go through a logarithm of time, a tank's balance or an Arrhenius law are not.
  const proportional = simulatedFaultIds.filter(
    (id) => !/replenished|too-long|too-short|too-warm|too-cool|printer/.test(id),
  );
  for (const kind of proportional) {
    it(`is proportional to the size of ${kind}`, () => {
      const size = typical(kind);
      const whole = allPatches("colour-negative", kind, size);
      const half = allPatches("colour-negative", kind, size / 2);
      half.forEach((v, i) => {
        expect(Math.abs(2 * v - (whole[i] ?? Number.NaN))).toBeLessThan(ROUNDING);
      });
    });
  }

  it("of time is ln(1 ± s) times the answer to development", () => {
    const long = allPatches("colour-paper", "developer-too-long", 0.25);
    const short = allPatches("colour-paper", "developer-too-short", 0.2);
    // 1.25 and 0.8 are each other's inverse, so the two cancel.
    long.forEach((v, i) => {
      expect(Math.abs(v + (short[i] ?? Number.NaN))).toBeLessThan(ROUNDING);
    });
  });

  it("of a weak mix is that of a strong one the other way round", () => {
    const strong = allPatches("colour-negative", "developer-too-strong", 0.1);
    allPatches("colour-negative", "developer-too-weak", 0.1).forEach((v, i) => {
      expect(Math.abs(v + (strong[i] ?? Number.NaN))).toBeLessThan(ROUNDING);
    });
  });
});

function largestSize(kind: string): number {
  return simulatedFaultKinds.find(({ id }) => id === kind)?.largestSize ?? Number.NaN;
}
