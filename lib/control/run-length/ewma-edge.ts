import { addScaled } from "./flat-vectors.ts";
import { normalDerivatives } from "./normal-derivatives.ts";

/**
 * The strip between the limits of one reading and the final limit on one side. The density there is
 * its Taylor series about the final limit, so that the narrowing strip costs no exponentials.
 * Lengths are in standard deviations of one step.
 */
export interface EwmaEdge {
  /** +1 above, −1 below. */
  readonly side: 1 | -1;
  /** From the nodes onto the derivatives of the density at this limit. */
  readonly inward: Float64Array;
  /** From the moments of this strip onto the nodes. */
  readonly outward: Float64Array;
  /** From the moments of this strip onto the derivatives at either limit: the same side, the other. */
  readonly corners: readonly [Float64Array, Float64Array];
}

/** Terms after which a strip `width` standard deviations wide has no more to add, to 10⁻¹². */
export function edgeTerms(width: number): number {
  let [term, count] = [width, 1];
  while (term > 1e-12) {
    count++;
    term *= width / Math.sqrt(count);
  }
  return count + 1;
}

/** From each node onto the derivatives at a limit. */
export function derivativesAt(
  limit: number,
  nodes: Float64Array,
  keep: number,
  shift: number,
  terms: number,
): Float64Array {
  return normalDerivatives(
    nodes.map((node) => limit - keep * node - shift),
    terms,
  );
}

/** Tables of one edge: limit at side·`limit`, the average keeping the share `keep` of itself. */
export function ewmaEdge(
  side: 1 | -1,
  nodes: Float64Array,
  weights: Float64Array,
  limit: number,
  keep: number,
  shift: number,
  terms: number,
): EwmaEdge {
  const at = side * limit;
  const from = keep * at + shift;
  return {
    side,
    inward: derivativesAt(at, nodes, keep, shift, terms),
    outward: normalDerivatives(
      nodes.map((node) => node - from),
      terms,
    ).map((value, at) => value * (weights[at % nodes.length] ?? 0)),
    corners: [
      normalDerivatives([at - from], 2 * terms),
      normalDerivatives([-at - from], 2 * terms),
    ],
  };
}

/** Moments ∫ dᵖ·f/p! over the strip, d the distance from the limit, of f with these derivatives. */
export function edgeMoments(
  side: 1 | -1,
  derivatives: ArrayLike<number>,
  width: number,
  terms: number,
): Float64Array {
  const moments = new Float64Array(terms);
  let powerP = width;
  for (let p = 0; p < terms; p++) {
    let power = powerP;
    let sum = 0;
    for (let k = 0; k < terms; k++) {
      sum += ((derivatives[k] ?? 0) * power) / (k + p + 1);
      power *= (-side * width) / (k + 1);
    }
    moments[p] = sum;
    powerP *= width / (p + 1);
  }
  return moments;
}

/** Takes what a strip would have sent on off the masses at the nodes and off the derivatives. */
export function takeStripOff(
  edge: EwmaEdge,
  moments: Float64Array,
  keep: number,
  masses: Float64Array,
  own: Float64Array,
  other: Float64Array,
): void {
  let power = -1;
  for (let p = 0; p < moments.length; p++) {
    const factor = (moments[p] ?? 0) * power;
    addScaled(masses, factor, edge.outward, p * masses.length, masses.length);
    addScaled(own, factor, edge.corners[0], p, own.length);
    addScaled(other, factor, edge.corners[1], p, other.length);
    power *= edge.side * keep;
  }
}
