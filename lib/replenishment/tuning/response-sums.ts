/**
 * Running sums of the regression z = β + ε·g, with g = 1 − e^−(n − τ) after the change and 0 before,
 * for one moment τ of change. They can be added to strip by strip, so that a fit that is kept up to
 * date and one over all strips are the same.
 */
export interface ResponseSums {
  /** Turnovers at the change. */
  readonly changeAt: number;
  count: number;
  g: number;
  gg: number;
  gz: number;
}

/** Share of the full response reached `turnoversSince` the change. */
export function responseShare(turnoversSince: number): number {
  return turnoversSince > 0 ? -Math.expm1(-turnoversSince) : 0;
}

export function emptySums(changeAt: number): ResponseSums {
  return { changeAt, count: 0, g: 0, gg: 0, gz: 0 };
}

/** Adds a strip; `z` is measured from a fixed origin near the baseline, against cancellation. */
export function addStrip(sums: ResponseSums, turnovers: number, z: number): void {
  const g = responseShare(turnovers - sums.changeAt);
  sums.count += 1;
  sums.g += g;
  sums.gg += g * g;
  sums.gz += g * z;
}

/** Sums of z and z², shared by every moment of change. */
export interface ReadingSums {
  count: number;
  z: number;
  zz: number;
}

/** The fit for one moment of change: residual sum of squares = rest + spread·(ε − error)². */
export interface MomentFit {
  readonly changeAt: number;
  /** Best ε. */
  readonly error: number;
  /** Baseline β at that ε. */
  readonly baseline: number;
  /** Σ(g − ḡ)²; 0 where no strip shows the change. */
  readonly spread: number;
  /** Residual sum of squares at the best ε. */
  readonly rest: number;
}

export function momentFit(sums: ResponseSums, readings: ReadingSums): MomentFit {
  const n = readings.count;
  const spread = Math.max(0, sums.gg - (sums.g * sums.g) / n);
  const cross = sums.gz - (sums.g * readings.z) / n;
  const total = Math.max(0, readings.zz - (readings.z * readings.z) / n);
  // Below this no strip shows the change and its size is anybody's guess.
  const visible = spread > 1e-12;
  const error = visible ? cross / spread : 0;
  return {
    changeAt: sums.changeAt,
    error,
    baseline: (readings.z - error * sums.g) / n,
    spread: visible ? spread : 0,
    rest: visible ? Math.max(0, total - (cross * cross) / spread) : total,
  };
}
