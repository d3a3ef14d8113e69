import { formatMinutes } from "../../units/index.ts";
import type { PlannedBatch } from "./plan-batches.ts";
import { courseInTank } from "./plan-development.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionDevelopment } from "./session-result.ts";

/**
 * Development of a colour batch: the time is fixed, because the three layers do not keep step at
 * another temperature, so the drift is held against the process's tolerance instead.
 */
export function planColourDevelopment(
  batch: PlannedBatch,
  session: ReadSession,
  filmsDone: number,
): SessionDevelopment {
  const step = session.recipe.steps.find((each) => each.bath === "developer");
  const aimC = step?.temperatureC ?? 38;
  const toleranceC = step?.toleranceC ?? 0.3;
  const bottle = session.bottles.find((each) => each.bath === "developer");
  const bottleTemperatureC = session.temperatures.developerC;
  const course = courseInTank(batch, session, bottleTemperatureC);
  const givenMin = batch.films[0]?.givenMin ?? 0;
  const reuseFactor = 1 + ((bottle?.timeIncreasePercentPerFilm ?? 0) / 100) * filmsDone;
  const timeMin = givenMin * reuseFactor;
  const timeS = Math.round(timeMin * 60);
  // Mean over the step of a difference that decays as exp(−kt) is (1 − exp(−kt))/(kt) of it.
  const kt = course.ratePerMin * timeMin;
  const meanShare = kt === 0 ? 1 : -Math.expm1(-kt) / kt;
  const around = course.surroundingsC;
  const meanC = around + (course.startTemperatureC - around) * meanShare;
  const warnings: string[] = [];
  if (Math.abs(meanC - aimC) > toleranceC) {
    const startC = around + (aimC - around) / meanShare;
    const heat = session.tank.heatWaterEquivalentMl;
    const tankC = session.temperatures.waterBathC ?? session.temperatures.roomC;
    const bottleC = session.preWash ? startC : startC + ((startC - tankC) * heat) / batch.volumeMl;
    warnings.push(
      `the developer averages ${meanC.toFixed(2)} °C over the step, ${aimC} ± ${toleranceC} °C is the tolerance; have it at ${bottleC.toFixed(1)} °C when you pour, or bring the water bath nearer to ${aimC} °C`,
    );
  }
  if (timeMin < 5) {
    warnings.push(
      `${formatMinutes(timeMin)} is short for a tank by hand: fill and empty in one go, the same way each time`,
    );
  }
  if (filmsDone > 0 && bottle?.timeIncreasePercentPerFilm === undefined) {
    warnings.push(
      "the developer has been used before and no longer time was given: follow the kit's own table",
    );
  }
  return {
    givenMin,
    referenceTemperatureC: aimC,
    reuseFactor,
    timeS,
    pourOutAtS: Math.max(0, timeS - session.handling.pourOutS),
    bottleTemperatureC,
    startTemperatureC: course.startTemperatureC,
    endTemperatureC: course.temperatureAt(timeMin),
    effectiveTemperatureC: meanC,
    errorIfUncorrectedPercent: null,
    errorWithoutDriftPercent: null,
    timePerHalfDegreeS: null,
    spanS: null,
    modelDescription:
      "fixed time: the layers of a colour film do not keep step at another temperature",
    assumptions: [...course.assumptions, `pushing and pulling: ${session.recipe.push}`],
    warnings,
  };
}
