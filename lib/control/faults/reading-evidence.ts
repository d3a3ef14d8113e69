import { inverse, Matrix } from "ml-matrix";
import { chiSquareCdf } from "../../numerics/index.ts";
import { componentWords, type FaultComponent, signedDensity } from "./fault-component.ts";
import type { FaultResidual, ReadingEvidence } from "./fault-ranking.ts";
import type { CourseEvidence } from "./hypothesis-evidence.ts";
import type { Signature } from "./pattern-signature.ts";
import { choleskyOf, sizeEvidence, whiten } from "./size-evidence.ts";

/** What `readingEvidence` and `faultResidual` look at. */
export interface FittedPattern {
  readonly components: readonly FaultComponent[];
  readonly noise: Matrix;
  readonly signature: Signature;
  readonly best: CourseEvidence;
  readonly sizeScale: number;
}

/** A reading is not explained if it lies farther than this from what is foretold, in sd. */
const FAR_SD = 2.5;

/** Each reading as foretold from the others under the fault at its fitted size. */
function foretold({ noise, signature, best }: FittedPattern) {
  const { course, size } = best;
  const V = Matrix.add(
    Matrix.mul(signature.covariance, size * size),
    Matrix.div(noise, course.strips),
  );
  const precision = inverse(V);
  const residual = course.mean.map((y, j) => y - size * (signature.mean[j] ?? 0));
  const turned = precision.mmul(Matrix.columnVector(residual)).to1DArray();
  const chiSquare = residual.reduce((sum, r, j) => sum + r * (turned[j] ?? 0), 0);
  const each = course.mean.map((y, j) => {
    const variance = 1 / precision.get(j, j);
    return { expected: y - (turned[j] ?? 0) * variance, sd: Math.sqrt(variance) };
  });
  return { each, chiSquare };
}

/** What each reading says for or against the fault, largest weight first. */
export function readingEvidence(fitted: FittedPattern): readonly ReadingEvidence[] {
  const { components, noise, signature, best } = fitted;
  const { each } = foretold(fitted);
  const rows = components.map((component, j) => {
    const observed = best.course.mean[j] ?? 0;
    const { expected, sd: expectedSd } = each[j] ?? { expected: 0, sd: 0 };
    const observedSd = Math.sqrt(noise.get(j, j) / best.course.strips);
    const logWeight = best.logEvidence - without(fitted, j);
    // A reading far from what the fault foretells is against it, even if "nothing wrong" does worse.
    const far = Math.abs(observed - expected) > FAR_SD * expectedSd;
    const speaks = far || logWeight <= -1 ? "against" : logWeight >= 1 ? "for" : "neither";
    const { parameter, name, colour } = component;
    const strength = far || Math.abs(logWeight) >= 3 ? "strongly " : "";
    const verdict = speaks === "neither" ? "says little" : `speaks ${strength}${speaks} it`;
    const words = `${componentWords(component)} ${signedDensity(observed)}: with the other readings this fault foretells ${signedDensity(expected)} ± ${expectedSd.toFixed(3)}; ${verdict}`;
    return {
      parameter,
      name,
      colour,
      observed,
      observedSd,
      expected,
      expectedSd,
      logWeight,
      speaks,
      words,
    } as const;
  });
  return rows.sort((a, b) => Math.abs(b.logWeight) - Math.abs(a.logWeight));

  function without(all: FittedPattern, left: number): number {
    const kept = all.components.map((_, j) => j).filter((j) => j !== left);
    if (kept.length === 0) return 0;
    const root = choleskyOf(all.noise.selection(kept, kept));
    if (root === undefined) return all.best.logEvidence;
    const ready = whiten(
      {
        mean: kept.map((j) => signature.mean[j] ?? 0),
        covariance: signature.covariance.selection(kept, kept),
      },
      root,
    );
    const mean = Matrix.columnVector(kept.map((j) => all.best.course.mean[j] ?? 0));
    const turned = ready.into.mmul(mean).to1DArray();
    return sizeEvidence(ready, turned, all.best.course.strips, all.sizeScale).logEvidence;
  }
}

/** What the fault at its fitted size leaves unexplained. */
export function faultResidual(fitted: FittedPattern): FaultResidual {
  const { each, chiSquare } = foretold(fitted);
  const degreesOfFreedom = Math.max(1, fitted.components.length - 1);
  const notExplained = fitted.components.flatMap((component, j) => {
    const { expected, sd } = each[j] ?? { expected: 0, sd: 1 };
    const observed = fitted.best.course.mean[j] ?? 0;
    if (Math.abs(observed - expected) <= FAR_SD * sd) return [];
    return [
      `${componentWords(component)} is ${signedDensity(observed)}, foretold ${signedDensity(expected)} ± ${sd.toFixed(3)}`,
    ];
  });
  const probability = 1 - chiSquareCdf(Math.max(0, chiSquare), degreesOfFreedom);
  return { chiSquare, degreesOfFreedom, probability, notExplained };
}
