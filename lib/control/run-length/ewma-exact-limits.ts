import { type ChartKernel, nodeCount, nodesOn, normalDensity, stepMatrix } from "./chart-kernel.ts";
import { derivativesAt, edgeMoments, edgeTerms, ewmaEdge, takeStripOff } from "./ewma-edge.ts";
import { dot, sumOf, tableTimes, vectorTimes } from "./flat-vectors.ts";
import { kernelReadings } from "./kernel-run-length.ts";
import { computable } from "./survival-operator.ts";

/** Narrower than this, in standard deviations of a step, the strips no longer count. */
const SETTLED = 1e-11;
/** From here on the strips are narrow enough for a short series. */
const NARROW = 0.2;
const NEGLIGIBLE = 1e-14;

/**
 * Run length of an EWMA whose limits widen from the first reading, ±c·√(1 − (1 − λ)^2t), from an
 * average of `start`: 1 + Σ P(no signal in t readings), the density carried forward.
 *
 * At first the nodes widen with the limits. Once the strips up to the final limits are narrow, the
 * nodes are those of the final limits, so that the step between them is computed once, and the
 * strips are taken off. Once the limits stand, what is still to come is known.
 */
export function exactLimitsRunLength(
  where: string,
  kernel: ChartKernel,
  lambda: number,
  shift: number,
  start: number,
  half: number,
): number {
  const keep = 1 - lambda;
  const limit = half / lambda;
  const stripAt = (t: number) => limit * (1 - Math.sqrt(1 - keep ** (2 * t)));
  // Where the chart may be and with which mass, in standard deviations of a step.
  let places: Float64Array = Float64Array.of(start / lambda);
  let mass: Float64Array = Float64Array.of(1);
  let readings = 1;
  let t = 1;
  for (; stripAt(t) > NARROW; t++) {
    const reach = limit - stripAt(t);
    const { nodes, weights } = nodesOn(-reach, reach, nodeCount(2 * reach));
    const later = Float64Array.from(nodes);
    mass = carried(places, mass, later, Float64Array.from(weights), keep, shift);
    places = later;
    const left = sumOf(mass);
    readings += left;
    if (left < NEGLIGIBLE * readings) return computable(where, readings);
  }
  const { targets, weights } = kernel;
  let main = carried(places, mass, targets, weights, keep, shift);
  const step = stepMatrix(kernel, shift);
  const most = edgeTerms(stripAt(t));
  const edges = ([1, -1] as const).map((side) => {
    const tables = ewmaEdge(side, targets, weights, limit, keep, shift, most);
    // The derivatives of the first density come from where the chart was, not from the final nodes.
    const first = derivativesAt(side * limit, places, keep, shift, most);
    return { ...tables, derivatives: tableTimes(first, mass, most) };
  });
  for (; stripAt(t) > SETTLED; t++) {
    const width = stripAt(t);
    const terms = edgeTerms(width);
    const moments = edges.map((edge) => edgeMoments(edge.side, edge.derivatives, width, terms));
    const left = sumOf(main) - (moments[0]?.[0] ?? 0) - (moments[1]?.[0] ?? 0);
    readings += left;
    if (left < NEGLIGIBLE * readings) return computable(where, readings);
    const later = edges.map((edge) => tableTimes(edge.inward, main, terms));
    const next = vectorTimes(main, step);
    for (const [e, edge] of edges.entries()) {
      const [own, other] = [later[e], later[1 - e]];
      if (own && other) takeStripOff(edge, moments[e] ?? own, keep, next, own, other);
    }
    for (const [e, edge] of edges.entries()) edge.derivatives = later[e] ?? edge.derivatives;
    main = next;
  }
  return computable(where, readings + dot(main, kernelReadings(where, kernel, shift)));
}

/** Masses at nodes one step later. */
function carried(
  places: Float64Array,
  mass: Float64Array,
  nodes: Float64Array,
  weights: Float64Array,
  keep: number,
  shift: number,
): Float64Array {
  const later = new Float64Array(nodes.length);
  for (let j = 0; j < nodes.length; j++) {
    const target = (nodes[j] ?? 0) - shift;
    let total = 0;
    for (let i = 0; i < mass.length; i++) {
      total += (mass[i] ?? 0) * normalDensity(target - keep * (places[i] ?? 0));
    }
    later[j] = total * (weights[j] ?? 0);
  }
  return later;
}
