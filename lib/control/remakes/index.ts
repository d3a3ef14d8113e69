export { type ProportionChart, proportionChart } from "./proportion-chart.ts";
export { faultRateChart, type RateChart } from "./rate-chart.ts";
export { type RankedReason, type RemakeEntry, rankedReasons } from "./remake-reasons.ts";
export { type DailyShares, type ShareDifference, shareDifference } from "./share-difference.ts";
