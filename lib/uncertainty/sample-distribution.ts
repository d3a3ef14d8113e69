import type { RandomStream } from "../numerics/index.ts";
import type { Distribution } from "./distribution.ts";

/** One draw from a distribution. */
export function drawFrom(d: Distribution, random: RandomStream): number {
  switch (d.kind) {
    case "constant":
      return d.mean;
    case "normal":
      return d.mean + d.standardUncertainty * random.normal();
    case "t":
      return d.mean + d.standardUncertainty * studentT(d.degreesOfFreedom, random);
    case "rectangular":
      return d.mean + d.halfWidth * (2 * random.uniform() - 1);
    case "triangular":
      return d.mean + d.halfWidth * (random.uniform() + random.uniform() - 1);
    case "trapezoidal": {
      const { mean, halfWidth: a, topHalfWidth: b } = d;
      return mean - a + (a + b) * random.uniform() + (a - b) * random.uniform();
    }
    case "arcsine":
      return d.mean + d.halfWidth * Math.sin(2 * Math.PI * random.uniform());
    case "sum": {
      let value = d.mean;
      for (const part of d.parts) value += drawFrom(part, random);
      return value;
    }
  }
}

function studentT(degreesOfFreedom: number, random: RandomStream): number {
  const chiSquare = 2 * gamma(degreesOfFreedom / 2, random);
  return random.normal() / Math.sqrt(chiSquare / degreesOfFreedom);
}

/** A gamma variable of scale 1, by the squeeze-free method of Marsaglia and Tsang (2000). */
function gamma(shape: number, random: RandomStream): number {
  if (shape < 1) {
    const lift = Math.max(random.uniform(), Number.MIN_VALUE) ** (1 / shape);
    return Math.max(gamma(shape + 1, random) * lift, Number.MIN_VALUE);
  }
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = random.normal();
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    const u = random.uniform();
    if (Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}
