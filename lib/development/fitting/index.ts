export {
  type ComparedLaw,
  compareRateLaws,
  type RateLawComparison,
} from "./compare-rate-laws.ts";
export { fitTimeTemperature } from "./fit-time-temperature.ts";
export type { FittedValue } from "./fitted-value.ts";
export {
  type PublishedTimeRow,
  type PublishedTimeTable,
  publishedTimeTable,
  publishedTimeTables,
} from "./published-time-tables.ts";
export { rateModelFromFit } from "./rate-model-from-fit.ts";
export type { FittedRow, RateLaw, TimeTemperatureFit } from "./time-temperature-fit.ts";
