export {
  chiSquareCdf,
  chiSquareQuantile,
  erf,
  fCdf,
  fQuantile,
  gammaLn,
  normalCdf,
  normalQuantile,
  studentTCdf,
  studentTQuantile,
} from "./distributions.ts";
export { findRoot, type RootSearch } from "./find-root.ts";
export { gaussLegendre, type QuadratureRule } from "./gauss-legendre.ts";
export { type Integral, integrate } from "./integrate.ts";
export { type LeastSquaresFit, leastSquares } from "./least-squares.ts";
export { minimizeScalar, type ScalarMinimum } from "./minimize-scalar.ts";
export { type Pchip, pchip } from "./pchip.ts";
export { type RandomStream, seededRandom } from "./seeded-random.ts";
