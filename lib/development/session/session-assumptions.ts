import type { TimedBatch } from "./batch-steps.ts";
import type { ReadSession } from "./read-session.ts";
import { waterChanges } from "./water-draft.ts";

/** What the plan takes for granted. */
export function sessionAssumptions(
  timed: readonly TimedBatch[],
  session: ReadSession,
  proven: boolean,
): readonly string[] {
  const { tank, handling } = session;
  const lines = [
    `times of a bath run from tank full to tank empty; pouring out takes its last ${handling.pourOutS} s`,
    `tank "${tank.id}": ${tank.fullMl} mL when full, nears its surroundings by ${(100 * (session.temperatures.waterBathC === null ? tank.coolingPerMin : tank.bathPerMin)).toFixed(1)} % of the difference a minute`,
    "the clock is a plain local clock: no change to or from summer time during the session",
  ];
  if (session.recipe.steps.some((step) => waterChanges(step, session) > 1 && session.colour)) {
    lines.push(
      'washes of a fixed length: the water changed once a minute in place of running water (common practice); wash: { by: "flow" } for running water',
    );
  }
  if (!proven)
    lines.push("films were put into the first tank with room: perhaps not the fewest batches");
  for (const { given } of session.developers) {
    if (given.use === "one-shot" && given.minimumStockMlPerFilm === undefined) {
      lines.push(
        `${given.name}: no least amount of stock for one film was given, only covering counts`,
      );
    }
    if (given.use === "re-used") {
      lines.push(
        `${given.name}: ${given.timeIncreasePercentPerFilm ?? 10} % longer for each film already developed in it`,
      );
    }
  }
  for (const { bath } of session.request.bottles ?? []) {
    const given = session.request.bottles?.find((each) => each.bath === bath)?.capacityFilmsPerL;
    const step = session.recipe.steps.find((each) => each.bath === bath);
    if (given === undefined && step?.capacityFilmsPerL !== undefined) {
      lines.push(`${bath}: ${step.capacityFilmsPerL} films a litre (${step.capacitySource})`);
    }
  }
  for (const { development, fixing, wash } of timed) {
    lines.push(development.modelDescription, ...development.assumptions);
    if (fixing) lines.push(...fixing.assumptions);
    if (wash) lines.push(...wash.result.assumptions);
  }
  return [...new Set(lines)];
}
