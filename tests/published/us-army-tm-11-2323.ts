import { celsiusFromFahrenheit, coldFixerFactor, coldWashFactor } from "wetside";
import type { Computed } from "./run.ts";

export const computed: Computed = {
  "fixing-at-10-c": ({ temperatureC }) => coldFixerFactor(temperatureC),
  "fixing-at-0-c": ({ temperatureC }) => coldFixerFactor(temperatureC),
  "washing-at-50-f": ({ temperatureF }) => coldWashFactor(celsiusFromFahrenheit(temperatureF)),
  "washing-at-35-f": ({ temperatureF }) => coldWashFactor(celsiusFromFahrenheit(temperatureF)),
};
