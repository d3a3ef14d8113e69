import { describe, expect, it } from "vitest";
import {
  alternatingRunLength,
  beyondThreeSigma,
  cusumRunLength,
  driftRunLength,
  ewmaRunLength,
  individualsMovingRangeRunLength,
  nelsonZoneRules,
  risingRunLength,
  westernElectricZoneRules,
  zoneRulesRunLength,
} from "wetside/control";
import { seededRandom } from "wetside/numerics";

// Two ways to the same number, both to some ten digits.
const SAME = 1e-9;

function relative(a: number, b: number): number {
  return Math.abs(a / b - 1);
}

/** Mean run length of a simulated chart, with its standard error. */
function simulated(runs: number, seed: number, signal: (draw: () => number) => number) {
  const { normal } = seededRandom(seed);
  let [sum, squares] = [0, 0];
  for (let i = 0; i < runs; i++) {
    const length = signal(normal);
    sum += length;
    squares += length * length;
  }
  const mean = sum / runs;
  return { mean, standardError: Math.sqrt((squares / runs - mean * mean) / runs) };
}

describe("ewmaRunLength", () => {
  it("is the individuals chart where λ is 1", () => {
    for (const shift of [0, 0.7, 2]) {
      const ewma = ewmaRunLength({ lambda: 1, limitWidth: 3 }, { shift }).zeroState;
      const individuals = zoneRulesRunLength([beyondThreeSigma], { shift }).zeroState;
      expect(relative(ewma, individuals)).toBeLessThan(SAME);
    }
  });
  it("does not care for the sign of a shift, nor of a head start together with it", () => {
    const design = { lambda: 0.2, limitWidth: 2.9 };
    const up = ewmaRunLength(design, { shift: 0.8, headStart: 0.3 }).zeroState;
    const down = ewmaRunLength(design, { shift: -0.8, headStart: -0.3 }).zeroState;
    expect(relative(up, down)).toBeLessThan(SAME);
  });
  it("grows with the limits and falls with the shift", () => {
    const at = (limitWidth: number, shift: number) =>
      ewmaRunLength({ lambda: 0.1, limitWidth }, { shift }).zeroState;
    expect(at(2.5, 0)).toBeLessThan(at(2.7, 0));
    expect(at(2.7, 0.5)).toBeGreaterThan(at(2.7, 1));
    expect(at(2.7, 1)).toBeGreaterThan(at(2.7, 2));
  });
  it("is shorter with limits that start narrow, and the same once they have opened", () => {
    const design = { lambda: 0.1, limitWidth: 2.7 };
    const exact = ewmaRunLength(design, { shift: 1, limits: "exact" }).zeroState;
    expect(exact).toBeLessThan(ewmaRunLength(design, { shift: 1 }).zeroState);
    const one = ewmaRunLength({ lambda: 1, limitWidth: 3 }, { limits: "exact" }).zeroState;
    expect(relative(one, ewmaRunLength({ lambda: 1, limitWidth: 3 }).zeroState)).toBeLessThan(SAME);
  });
  it("agrees with a simulated one-sided chart within four standard errors", () => {
    const lambda = 0.2;
    const half = 2.7 * Math.sqrt(lambda / (2 - lambda));
    const { mean, standardError } = simulated(20_000, 5, (draw) => {
      let z = 0;
      for (let t = 1; ; t++) {
        z = Math.max(0, lambda * (draw() + 0.75) + (1 - lambda) * z);
        if (z > half) return t;
      }
    });
    const computed = ewmaRunLength({ lambda, limitWidth: 2.7 }, { shift: 0.75, sides: "upper" });
    expect(Math.abs(computed.zeroState - mean)).toBeLessThan(4 * standardError);
  });
  it("agrees in steady state with charts that ran in control for 100 readings first", () => {
    const lambda = 0.1;
    const half = 2.5 * Math.sqrt(lambda / (2 - lambda));
    const { mean, standardError } = simulated(20_000, 6, (draw) => {
      let z = 0;
      for (let t = 1; t <= 100; t++) {
        z = lambda * draw() + (1 - lambda) * z;
        // A false alarm before the shift: that chart is started anew.
        if (Math.abs(z) > half) [z, t] = [0, 0];
      }
      for (let t = 1; ; t++) {
        z = lambda * (draw() + 1) + (1 - lambda) * z;
        if (Math.abs(z) > half) return t;
      }
    });
    const computed = ewmaRunLength({ lambda, limitWidth: 2.5 }, { shift: 1 });
    expect(Math.abs(computed.steadyState - mean)).toBeLessThan(4 * standardError);
    expect(computed.steadyState).not.toBeCloseTo(computed.zeroState, 2);
  });
  it("refuses what is out of range and combinations that have no meaning", () => {
    expect(() => ewmaRunLength({ lambda: 0, limitWidth: 3 })).toThrow("lambda is 0");
    expect(() => ewmaRunLength({ lambda: 0.1, limitWidth: -1 })).toThrow("limitWidth is -1");
    expect(() =>
      ewmaRunLength({ lambda: 0.1, limitWidth: 3 }, { sides: "upper", limits: "exact" }),
    ).toThrow("limits");
    expect(() =>
      ewmaRunLength({ lambda: 0.1, limitWidth: 3 }, { sides: "upper", headStart: -0.5 }),
    ).toThrow("headStart");
  });
});

describe("cusumRunLength", () => {
  it("puts two equal sides together to half of one", () => {
    const design = { referenceValue: 0.5, decisionInterval: 4 };
    const one = cusumRunLength(design, { sides: "upper" }).zeroState;
    expect(relative(cusumRunLength(design).zeroState, one / 2)).toBeLessThan(SAME);
  });
  it("is shorter with a head start, most of all when the shift is there already", () => {
    const design = { referenceValue: 0.5, decisionInterval: 5 };
    const gain = (shift: number) =>
      cusumRunLength(design, { shift, headStart: 0.5 }).zeroState /
      cusumRunLength(design, { shift }).zeroState;
    expect(gain(1)).toBeLessThan(gain(0));
    expect(gain(0)).toBeLessThan(1);
  });
  it("gives the steady state of two sides when it is asked for", () => {
    const design = { referenceValue: 0.5, decisionInterval: 4 };
    expect(cusumRunLength(design).steadyState).toBeUndefined();
    const { zeroState, steadyState = Number.NaN } = cusumRunLength(design, {
      shift: 1,
      steadyState: true,
    });
    expect(steadyState).toBeLessThan(zeroState);
    const other = cusumRunLength(design, { shift: -1, steadyState: true }).steadyState ?? 0;
    expect(relative(steadyState, other)).toBeLessThan(1e-6);
    expect(() =>
      cusumRunLength({ referenceValue: 0.5, decisionInterval: 20 }, { steadyState: true }),
    ).toThrow("for the steady state of two sides");
  });
  it("agrees in the steady state of two sides with charts that ran in control first", () => {
    const [k, h] = [0.25, 4];
    const { mean, standardError } = simulated(20_000, 9, (draw) => {
      let [up, down] = [0, 0];
      const signals = (x: number) => {
        [up, down] = [Math.max(0, up + x - k), Math.max(0, down - x - k)];
        return up > h || down > h;
      };
      // A false alarm before the shift: that chart is started anew.
      for (let t = 1; t <= 60; t++) if (signals(draw())) [up, down, t] = [0, 0, 0];
      for (let t = 1; ; t++) if (signals(draw() + 0.5)) return t;
    });
    const design = { referenceValue: k, decisionInterval: h };
    const computed = cusumRunLength(design, { shift: 0.5, steadyState: true }).steadyState ?? 0;
    expect(Math.abs(computed - mean)).toBeLessThan(4 * standardError);
  });
  it("has the steady state of one side where the other hardly ever signals", () => {
    const design = { referenceValue: 2, decisionInterval: 2 };
    const both = cusumRunLength(design, { shift: 2, steadyState: true }).steadyState ?? 0;
    const alone = cusumRunLength(design, { shift: 2, sides: "upper" }).steadyState ?? 0;
    expect(relative(both, alone)).toBeLessThan(1e-5);
  });
  it("says so when a chart would not signal within double precision", () => {
    expect(() => cusumRunLength({ referenceValue: 5, decisionInterval: 40 })).toThrow(
      "narrow the limits",
    );
  });
});

describe("zoneRulesRunLength", () => {
  it("is 1/p where the chart has no memory", () => {
    const alone = zoneRulesRunLength([{ pattern: "beyond", hits: 1, window: 1, sigmas: 3 }]);
    expect(alone.zeroState).toBeCloseTo(1 / 0.0026997960632601913, 8);
    expect(alone.steadyState).toBeCloseTo(alone.zeroState, 8);
  });
  it("is 2^n − 1 for n in a row on one side", () => {
    for (const n of [7, 8, 9]) {
      const rule = { pattern: "beyond", hits: n, window: n, sigmas: 0 } as const;
      expect(relative(zoneRulesRunLength([rule]).zeroState, 2 ** n - 1)).toBeLessThan(SAME);
    }
  });
  it("never grows by adding a rule", () => {
    for (const shift of [0, 0.5, 1.5]) {
      let last = Number.POSITIVE_INFINITY;
      for (let n = 1; n <= nelsonZoneRules.length; n++) {
        const now = zoneRulesRunLength(nelsonZoneRules.slice(0, n), { shift }).zeroState;
        expect(now).toBeLessThanOrEqual(last * (1 + SAME));
        last = now;
      }
    }
  });
  it("does not care for the sign of a shift", () => {
    const up = zoneRulesRunLength(westernElectricZoneRules, { shift: 0.9 });
    const down = zoneRulesRunLength(westernElectricZoneRules, { shift: -0.9 });
    expect(relative(up.zeroState, down.zeroState)).toBeLessThan(SAME);
    expect(relative(up.steadyState, down.steadyState)).toBeLessThan(SAME);
  });
  it("refuses rules that hardly ever signal instead of printing digits that mean nothing", () => {
    const never = { pattern: "beyond", hits: 20, window: 20, sigmas: 6 } as const;
    expect(() => zoneRulesRunLength([never])).toThrow("beyond what double precision can carry");
  });
  it("refuses no rules, and hits that do not fit the window", () => {
    expect(() => zoneRulesRunLength([])).toThrow("at least one rule");
    expect(() =>
      zoneRulesRunLength([{ pattern: "beyond", hits: 4, window: 3, sigmas: 1 }]),
    ).toThrow("hits is 4");
  });
});

describe("risingRunLength and alternatingRunLength", () => {
  it("have closed forms for short runs", () => {
    // Three rising or falling: no signal in n readings leaves the alternating orders, 2·Eₙ of n!,
    // whose sum is 2·(sec 1 + tan 1) − 1 − 1 (the orders of 0 and 1 readings are counted once).
    const exact = 2 * (1 / Math.cos(1) + Math.tan(1)) - 2;
    expect(relative(risingRunLength(3), exact)).toBeLessThan(SAME);
  });
  it("agree with simulation within four standard errors", () => {
    const { mean, standardError } = simulated(4000, 8, (draw) => {
      let last = draw();
      let [run, direction] = [1, 0];
      for (let t = 2; ; t++) {
        const value = draw();
        const step = Math.sign(value - last);
        run = step === -direction ? run + 1 : 2;
        direction = step;
        last = value;
        if (run >= 10) return t;
      }
    });
    expect(Math.abs(alternatingRunLength(10) - mean)).toBeLessThan(4 * standardError);
  });
  it("refuse runs too short to mean anything", () => {
    expect(() => risingRunLength(2)).toThrow("points is 2");
    expect(() => alternatingRunLength(3.5)).toThrow("whole number");
  });
});

describe("individualsMovingRangeRunLength", () => {
  it("is the individuals chart alone where the range limit can never be passed", () => {
    const both = individualsMovingRangeRunLength({ limitWidth: 3, rangeLimit: 6 });
    expect(both).toBeCloseTo(zoneRulesRunLength([beyondThreeSigma]).zeroState, 6);
  });
  it("shows that the pair gives a false alarm every 105 readings, not every 370", () => {
    expect(individualsMovingRangeRunLength()).toBeCloseTo(105.33, 2);
  });
});

describe("driftRunLength", () => {
  it("is longer for slower drifts and approaches the in-control length from below", () => {
    const chart = { chart: "ewma", lambda: 0.1, limitWidth: 2.7 } as const;
    const lengths = [0.5, 0.1, 0.02, 0.004].map((drift) => driftRunLength(chart, drift));
    expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
    expect(Math.max(...lengths)).toBeLessThan(ewmaRunLength(chart).zeroState);
  });
  it("counts the readings before the drift", () => {
    const chart = { chart: "individuals", limitWidth: 3 } as const;
    const later = driftRunLength(chart, 1, { readingsBefore: 3 }) - driftRunLength(chart, 1);
    expect(later).toBeGreaterThan(2.9);
    expect(later).toBeLessThan(3);
  });
  it("refuses a drift of nothing", () => {
    expect(() => driftRunLength({ chart: "individuals", limitWidth: 3 }, 0)).toThrow(
      "driftPerReading",
    );
  });
});
