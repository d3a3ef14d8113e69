export { autocorrelationFigure } from "./control/autocorrelation-figure.ts";
export { changePointFigure } from "./control/change-point-figure.ts";
export type { ChartEvent } from "./control/chart-events.ts";
export { type ControlChartOptions, controlChartFigure } from "./control/control-chart.ts";
export { controlExplorer } from "./control/control-explorer.ts";
export { cusumFigure } from "./control/cusum-figure.ts";
export { ewmaFigure } from "./control/ewma-figure.ts";
export { type FalseAlarmBar, falseAlarmFigure } from "./control/false-alarm-figure.ts";
export { faultEvidenceFigure } from "./control/fault-evidence-figure.ts";
export { faultProbabilityFigure } from "./control/fault-probability-figure.ts";
export { gaugeComponentsFigure, gaugeReadingsFigure } from "./control/gauge-figure.ts";
export { individualsFigure } from "./control/individuals-figure.ts";
export { type NearestLimit, nearestLimit } from "./control/nearest-limit.ts";
export { proportionChartFigure } from "./control/proportion-chart-figure.ts";
export { remakeReasonsFigure } from "./control/remake-reasons-figure.ts";
export { runLengthDistributionFigure } from "./control/run-length-distribution-figure.ts";
export { type RunLengthCurve, runLengthFigure } from "./control/run-length-figure.ts";
export { signalTable } from "./control/signal-table.ts";
export {
  latestStripFigure,
  type StripFigureOptions,
  stripChart,
  stripExplorer,
} from "./control/strip-figures.ts";
export { todayFigure } from "./control/today-figure.ts";
export { trendFigure } from "./control/trend-figure.ts";
export { attentionTable, changeTable } from "./control/verdict-tables.ts";
export { verdictLines, verdictMarkdown } from "./control/verdict-words.ts";
export { arrheniusFigure } from "./development/arrhenius-figure.ts";
export type { NamedFit } from "./development/arrhenius-panels.ts";
export { coefficientSpreadFigure } from "./development/coefficient-spread-figure.ts";
export { contrastTimeFigure } from "./development/contrast-time-figure.ts";
export { driftFigure } from "./development/drift-figure.ts";
export { sessionActionTable } from "./development/session-action-table.ts";
export { sessionSheet } from "./development/session-sheet.ts";
export {
  sessionBatchTable,
  sessionBottleTable,
  sessionDevelopmentTable,
} from "./development/session-tables.ts";
export { sessionTimeline } from "./development/session-timeline.ts";
export {
  type DisplayBundle,
  displayedAs,
  type JsonObject,
  type PlotlyFigure,
  plotlyFigure,
  type VegaLiteFigure,
  vegaLiteFigure,
} from "./parts/figure.ts";
export { type Table, type TableColumn, type TableOptions, table } from "./parts/table.ts";
export { type FigureChannel, figureWidth, palette } from "./parts/theme.ts";
export { checkTable } from "./records/check-table.ts";
export type { DayTableOptions } from "./records/day-table.ts";
export { productionTable } from "./records/production-table.ts";
export { pumpTable } from "./records/pump-table.ts";
export { temperatureTable } from "./records/temperature-table.ts";
export { workTable } from "./records/work-table.ts";
export { deliveredRateFigure } from "./replenishment/delivered-rate-figure.ts";
export { type RateWitness, rateAgreementFigure } from "./replenishment/rate-agreement-figure.ts";
export { rateFitFigure } from "./replenishment/rate-fit-figure.ts";
export { rateLikelihoodExplorer } from "./replenishment/rate-likelihood-explorer.ts";
export type { RateChannel } from "./replenishment/rate-panels.ts";
export { ratePathFigure } from "./replenishment/rate-path-figure.ts";
export { rateProfileFigure } from "./replenishment/rate-profile-figure.ts";
export { rateSequenceFigure } from "./replenishment/rate-sequence-figure.ts";
export { type RateWitnesses, rateWitnesses } from "./replenishment/rate-witnesses.ts";
export { rateAdviceSheet, rateVerdictLine } from "./replenishment/rate-words.ts";
export { type NamedSilverLog, silverFigure } from "./replenishment/silver-figure.ts";
export { stepTestFigure } from "./replenishment/step-test-figure.ts";
export { type SliderRun, tankExplorer } from "./replenishment/tank-explorer.ts";
export { type NamedTankLog, tankLogFigure } from "./replenishment/tank-log-figure.ts";
export { washResidualFigure } from "./replenishment/wash-residual.ts";
export { washStagesFigure } from "./replenishment/wash-stages-figure.ts";
export { type BathPhSeries, bathPhFigure } from "./solutions/bath-ph-figure.ts";
export { densityFigure } from "./solutions/density-figure.ts";
export { hydrometerFigure } from "./solutions/hydrometer-figure.ts";
export { mixingCostTable, mixingSheetTable } from "./solutions/mixing-sheet-table.ts";
export { acidMixWords, cautionWords, hydrometerWords } from "./solutions/mixing-words.ts";
export { stockFigure } from "./solutions/stock-figure.ts";
export { strengthIntervalFigure } from "./uncertainty/strength-interval-figure.ts";
export { uncertaintyBudgetTable } from "./uncertainty/uncertainty-budget-table.ts";
export {
  type NamedBudget,
  uncertaintyShareFigure,
} from "./uncertainty/uncertainty-share-figure.ts";
