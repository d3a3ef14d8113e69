import { requireEntries, requireObject } from "../../input/index.ts";
import { activationEnergyModel } from "../rate/activation-energy-model.ts";
import { factorPerTenDegreesModel } from "../rate/factor-per-ten-degrees-model.ts";
import type { RateModel, RateReach } from "../rate/rate-model.ts";
import { shown } from "../rate/shown.ts";
import type { TimeTemperatureFit } from "./time-temperature-fit.ts";

/**
 * The rate model that a fit stands for. It keeps the range of the table, and is stretched no
 * farther beyond it than the table is wide.
 *
 * @param fit result of fitTimeTemperature
 * @param reach range and reach in place of the table's, °C
 * @returns the model, rate 1 at the fit's reference temperature
 * @throws InputError if the fitted rate does not grow with temperature
 *
 * @example
 * const rows = [
 *   { temperatureC: 18, timeMin: 9.474 },
 *   { temperatureC: 20, timeMin: 8 },
 *   { temperatureC: 24, timeMin: 5.744 },
 * ]
 * rateModelFromFit(fitTimeTemperature({ rows })).range // => { minC: 18, maxC: 24 }
 *
 * Source: Arrhenius equation, IUPAC Gold Book A00446.
 */
export function rateModelFromFit(fit: TimeTemperatureFit, reach: RateReach = {}): RateModel {
  requireObject(
    "rateModelFromFit",
    "fit",
    fit,
    "an object with law, coefficient, coefficientUnit, …",
  );
  requireObject("rateModelFromFit", "range", fit.range, "an object with minC and maxC");
  requireEntries("rateModelFromFit", "rows", fit.rows);
  requireObject(
    "rateModelFromFit",
    "coefficient",
    fit.coefficient,
    "an object with value, standardError, lower, …",
  );
  const given = {
    referenceTemperatureC: fit.referenceTemperatureC,
    range: reach.range ?? fit.range,
    refuseBeyondC: reach.refuseBeyondC ?? fit.range.maxC - fit.range.minC,
  };
  const { value, lower, upper } = fit.coefficient;
  const model =
    fit.law === "activation-energy"
      ? activationEnergyModel({ ...given, activationEnergyKJPerMol: value })
      : factorPerTenDegreesModel({ ...given, factorPerTenDegrees: value });
  return {
    ...model,
    assumptions: [
      `fitted to ${fit.rows.length} printed times: ${shown(value)} ${fit.coefficientUnit}, ${shown(100 * fit.confidence)} % interval ${shown(lower)} to ${shown(upper)}`,
      ...model.assumptions,
    ],
  };
}
