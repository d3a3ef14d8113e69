import { seededRandom } from "wetside/numerics";
import { rateChange, tankOverDays } from "wetside/replenishment";

/** A kind of lab: what happens to its pump, and how well it can be seen. */
export interface CoverageCell {
  /** Fraction by which the pump delivers too much; 0 where nothing changes. */
  readonly error: number;
  /** Turnovers from the first strip to the change. */
  readonly changeAt: number;
  /** Turnovers from the first strip to the last. */
  readonly turnovers: number;
  /** Standard deviation of a density, correlated 0.5 between the colours. */
  readonly noiseSd: number;
  readonly stripsPerTurnover: number;
}

export interface CoverageResult {
  readonly cell: CoverageCell;
  readonly labs: number;
  /** Labs whose interval of the error held the truth; of the moment. */
  readonly errorHeld: number;
  readonly momentHeld: number;
  readonly calledChanged: number;
  /** Mean width of the interval of the error. */
  readonly width: number;
}

const TURNOVERS = 4;
const CORRELATION = 0.5;
/** LD in three colours, then HD − LD in three colours: density per 100 % of rate, illustrative. */
const SENSITIVITY = [0.44, 0.48, 0.54, 0.24, 0.26, 0.28];
const NOISE = [0.01, 0.015];
const DENSITIES = [12, 30];

/** Every cell in which the pump changes. */
export function coverageCells(): CoverageCell[] {
  return NOISE.flatMap((noiseSd) =>
    DENSITIES.flatMap((stripsPerTurnover) =>
      [0.05, 0.1, 0.2, 0.3].flatMap((size) =>
        [-size, size].flatMap((error) =>
          [1 / 3, 1, 2, 3].map((changeAt) => {
            return { error, changeAt, turnovers: TURNOVERS, noiseSd, stripsPerTurnover };
          }),
        ),
      ),
    ),
  );
}

/** Cells in which nothing changes, whatever the moment. */
export function falseAlarmCells(): CoverageCell[] {
  return NOISE.flatMap((noiseSd) =>
    DENSITIES.map((stripsPerTurnover) => {
      return {
        error: 0,
        changeAt: TURNOVERS / 2,
        turnovers: TURNOVERS,
        noiseSd,
        stripsPerTurnover,
      };
    }),
  );
}

/** Runs a cell's labs: one tank, solved exactly, and strips that differ by their noise only. */
export function coverageCell(cell: CoverageCell, labs: number, seed: number): CoverageResult {
  const { normal, uniform } = seededRandom(seed);
  const noise = SENSITIVITY.map((_, j) => SENSITIVITY.map((__, k) => covariance(j, k, cell)));
  const own = Math.sqrt(1 - CORRELATION);
  let [errorHeld, momentHeld, calledChanged, width] = [0, 0, 0, 0];
  for (let lab = 0; lab < labs; lab++) {
    // Within half a strip of the cell's moment, so that it falls between the strips.
    const changeAt = cell.changeAt + (uniform() - 0.5) / cell.stripsPerTurnover;
    const { turnovers, shares } = tankOfLab(cell, changeAt);
    const deviations = shares.map((share) => {
      const common = [normal(), normal()].map((each) => Math.sqrt(CORRELATION) * each);
      return SENSITIVITY.map((s, j) => {
        return s * share + cell.noiseSd * ((common[Math.floor(j / 3)] ?? 0) + own * normal());
      });
    });
    const series = { turnovers, deviations, sensitivity: SENSITIVITY, noise };
    const found = rateChange(series, { seed: lab });
    const [low, high] = found.errorInterval;
    const [early, late] = found.changeAtInterval;
    if (low <= cell.error && cell.error <= high) errorHeld += 1;
    if (early <= changeAt && changeAt <= late) momentHeld += 1;
    if (found.pValue <= 0.05) calledChanged += 1;
    width += (high - low) / labs;
  }
  return { cell, labs, errorHeld, momentHeld, calledChanged, width };
}

/**
 * Turnovers as the pump is set, and the answer of developing agent as a share of what 100 % of rate
 * makes of it, at each strip. A strip is run at the end of each stretch of the tank's log; the
 * stretch in which the pump changes is parted there.
 */
function tankOfLab({ error, turnovers, stripsPerTurnover }: CoverageCell, changeAt: number) {
  const tank = {
    volumeL: 20,
    rateMlPerM2: 600,
    components: [
      { name: "agent", replenisherGPerL: 5.2, startGPerL: 3.5, consumedGPerM2: 0.6 * 1.7 },
    ],
  };
  const count = Math.round(turnovers * stripsPerTurnover);
  const strips = Array.from({ length: count + 1 }, (_, i) => i / stripsPerTurnover);
  const ends = [...strips.slice(1), changeAt].sort((a, b) => a - b);
  const days = ends.map((end, i) => {
    const areaM2 = ((end - (ends[i - 1] ?? 0)) * tank.volumeL * 1000) / tank.rateMlPerM2;
    const delivered = end > changeAt ? 1 + error : 1;
    return {
      date: new Date(Date.UTC(2026, 0, 1 + i)).toISOString().slice(0, 10),
      areaM2,
      replenisherMl: areaM2 * tank.rateMlPerM2 * delivered,
    };
  });
  const states = tankOverDays(tank, days).days;
  const shares = states
    .filter((_, i) => ends[i] !== changeAt)
    .map(({ concentrationGPerL: { agent = 3.5 } }) => (agent - 3.5) / 1.7);
  return { turnovers: strips, shares: [0, ...shares] };
}

function covariance(j: number, k: number, { noiseSd }: CoverageCell): number {
  if (j === k) return noiseSd ** 2;
  return Math.floor(j / 3) === Math.floor(k / 3) ? CORRELATION * noiseSd ** 2 : 0;
}
