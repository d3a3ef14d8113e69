import { developUntil } from "../drift/develop-until.ts";
import { newtonCooling } from "../drift/newton-cooling.ts";
import { publishedFactorSpan } from "../rate/default-rate-model.ts";
import { factorPerTenDegreesModel } from "../rate/factor-per-ten-degrees-model.ts";
import { type RateModel, requireWithinReach } from "../rate/rate-model.ts";
import type { PlannedBatch } from "./plan-batches.ts";
import type { ReadDeveloper } from "./read-developers.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionDevelopment } from "./session-result.ts";

const HALF_DEGREE_C = 0.5;
/** For comparisons only: a time too short to be even is refused where it is planned. */
const ANY_TIME = { warnBelowMin: 0, refuseBelowMin: 0 };

/** Temperature of a bath poured into a tank, and how it drifts from there. */
export function courseInTank(batch: PlannedBatch, session: ReadSession, bottleC: number) {
  const { tank, temperatures, preWash } = session;
  const { roomC, waterBathC } = temperatures;
  // A pre-wash at the developer's temperature, or a water bath, has warmed the tank already.
  const tankC = preWash ? bottleC : (waterBathC ?? roomC);
  const heat = tank.heatWaterEquivalentMl;
  const startTemperatureC = (batch.volumeMl * bottleC + heat * tankC) / (batch.volumeMl + heat);
  const full = waterBathC === null ? tank.coolingPerMin : tank.bathPerMin;
  // Less liquid in the same tank drifts faster.
  const ratePerMin = (full * (tank.fullMl + heat)) / (batch.volumeMl + heat);
  return newtonCooling({ startTemperatureC, surroundingsC: waterBathC ?? roomC, ratePerMin });
}

/** Development of a black-and-white batch: corrected for re-use, temperature and drift. */
export function planDevelopment(
  batch: PlannedBatch,
  session: ReadSession,
  developer: ReadDeveloper,
  filmsDone: number,
): SessionDevelopment {
  const { model, referenceTemperatureC, timeIncreasePercentPerFilm } = developer;
  const bottleTemperatureC = session.temperatures.developerC;
  requireWithinReach("planSession", "temperatures.developerC", bottleTemperatureC, model);
  const givenMin = batch.films[0]?.givenMin ?? 0;
  const reuseFactor = 1 + (timeIncreasePercentPerFilm / 100) * filmsDone;
  const target = {
    targetMin: givenMin * reuseFactor,
    targetTemperatureC: referenceTemperatureC,
    drainMin: session.handling.pourOutS / 60,
  };
  const course = courseInTank(batch, session, bottleTemperatureC);
  const until = developUntil({ ...target, course, model });
  const timeS = Math.round(until.timeMin * 60);
  const timeWith = (otherModel: RateModel, bottleC: number) => {
    const other = { course: courseInTank(batch, session, bottleC), model: otherModel };
    return (
      developUntil({ ...target, ...other, drainMin: 0, evenDevelopment: ANY_TIME }).timeMin * 60
    );
  };
  // Towards the middle of the model's range, so that the other bath cannot leave its reach.
  const middleC = (model.range.minC + model.range.maxC) / 2;
  const step = bottleTemperatureC <= middleC ? HALF_DEGREE_C : -HALF_DEGREE_C;
  const change = timeWith(model, bottleTemperatureC + step) - until.timeMin * 60;
  const span = publishedFactorSpan;
  const spanS = developer.modelIsDefault
    ? [span.lowest, span.highest].map((factorPerTenDegrees) => {
        const reach = { referenceTemperatureC, refuseBeyondC: 40 };
        const other = factorPerTenDegreesModel({ factorPerTenDegrees, ...reach });
        return Math.round(timeWith(other, bottleTemperatureC));
      })
    : null;
  const [one = 0, two = 0] = spanS ?? [];
  const warnings = [...until.warnings];
  if (spanS !== null && Math.abs(one - two) > 0.1 * timeS) {
    warnings.push(
      "no temperature table for this film and developer was given; published coefficients spread the time by more than 10 %",
    );
  }
  return {
    givenMin,
    referenceTemperatureC,
    reuseFactor,
    timeS,
    pourOutAtS: Math.max(0, timeS - session.handling.pourOutS),
    bottleTemperatureC,
    startTemperatureC: course.startTemperatureC,
    endTemperatureC: until.dose.endTemperatureC,
    effectiveTemperatureC: until.dose.effectiveTemperatureC,
    errorIfUncorrectedPercent: until.errorIfUncorrectedPercent,
    errorWithoutDriftPercent: until.errorIfStartTemperatureOnlyPercent,
    timePerHalfDegreeS: Math.round(step > 0 ? change : -change),
    spanS: spanS === null ? null : [Math.min(one, two), Math.max(one, two)],
    modelDescription: model.description,
    assumptions: until.assumptions,
    warnings,
  };
}
