export { type ChangePoint, changePoint } from "./change-point.ts";
export { type LimitCrossing, limitCrossing } from "./limit-crossing.ts";
export {
  type LinearTrend,
  linearTrend,
  predictedAt,
  type TrendPrediction,
} from "./linear-trend.ts";
export { type MannKendall, mannKendall } from "./mann-kendall.ts";
export { type TheilSenTrend, theilSen } from "./theil-sen.ts";
export { type TrendOutlook, trendOutlook } from "./trend-outlook.ts";
