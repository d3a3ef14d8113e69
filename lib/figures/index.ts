export { arrheniusFigure } from "./arrhenius-figure.ts";
export type { NamedFit } from "./arrhenius-panels.ts";
export { autocorrelationFigure } from "./autocorrelation-figure.ts";
export { type BathPhSeries, bathPhFigure } from "./bath-ph-figure.ts";
export { changePointFigure } from "./change-point-figure.ts";
export type { ChartEvent } from "./chart-events.ts";
export { checkTable } from "./check-table.ts";
export { coefficientSpreadFigure } from "./coefficient-spread-figure.ts";
export { contrastTimeFigure } from "./contrast-time-figure.ts";
export { type ControlChartOptions, controlChartFigure } from "./control-chart.ts";
export { controlExplorer } from "./control-explorer.ts";
export { cusumFigure } from "./cusum-figure.ts";
export type { DayTableOptions } from "./day-table.ts";
export { deliveredRateFigure } from "./delivered-rate-figure.ts";
export { densityFigure } from "./density-figure.ts";
export { driftFigure } from "./drift-figure.ts";
export { ewmaFigure } from "./ewma-figure.ts";
export { type FalseAlarmBar, falseAlarmFigure } from "./false-alarm-figure.ts";
export { faultEvidenceFigure } from "./fault-evidence-figure.ts";
export { faultProbabilityFigure } from "./fault-probability-figure.ts";
export {
  type DisplayBundle,
  displayedAs,
  type JsonObject,
  type PlotlyFigure,
  plotlyFigure,
  type VegaLiteFigure,
  vegaLiteFigure,
} from "./figure.ts";
export { gaugeComponentsFigure, gaugeReadingsFigure } from "./gauge-figure.ts";
export { hydrometerFigure } from "./hydrometer-figure.ts";
export { individualsFigure } from "./individuals-figure.ts";
export { mixingCostTable, mixingSheetTable } from "./mixing-sheet-table.ts";
export { acidMixWords, cautionWords, hydrometerWords } from "./mixing-words.ts";
export { type NearestLimit, nearestLimit } from "./nearest-limit.ts";
export { productionTable } from "./production-table.ts";
export { proportionChartFigure } from "./proportion-chart-figure.ts";
export { pumpTable } from "./pump-table.ts";
export { type RateWitness, rateAgreementFigure } from "./rate-agreement-figure.ts";
export { rateFitFigure } from "./rate-fit-figure.ts";
export { rateLikelihoodExplorer } from "./rate-likelihood-explorer.ts";
export type { RateChannel } from "./rate-panels.ts";
export { ratePathFigure } from "./rate-path-figure.ts";
export { rateProfileFigure } from "./rate-profile-figure.ts";
export { rateSequenceFigure } from "./rate-sequence-figure.ts";
export { type RateWitnesses, rateWitnesses } from "./rate-witnesses.ts";
export { rateAdviceSheet, rateVerdictLine } from "./rate-words.ts";
export { remakeReasonsFigure } from "./remake-reasons-figure.ts";
export { runLengthDistributionFigure } from "./run-length-distribution-figure.ts";
export { type RunLengthCurve, runLengthFigure } from "./run-length-figure.ts";
export { sessionActionTable } from "./session-action-table.ts";
export { sessionSheet } from "./session-sheet.ts";
export {
  sessionBatchTable,
  sessionBottleTable,
  sessionDevelopmentTable,
} from "./session-tables.ts";
export { sessionTimeline } from "./session-timeline.ts";
export { signalTable } from "./signal-table.ts";
export { type NamedSilverLog, silverFigure } from "./silver-figure.ts";
export { stepTestFigure } from "./step-test-figure.ts";
export { stockFigure } from "./stock-figure.ts";
export { strengthIntervalFigure } from "./strength-interval-figure.ts";
export {
  latestStripFigure,
  type StripFigureOptions,
  stripChart,
  stripExplorer,
} from "./strip-figures.ts";
export { type Table, type TableColumn, type TableOptions, table } from "./table.ts";
export { type SliderRun, tankExplorer } from "./tank-explorer.ts";
export { type NamedTankLog, tankLogFigure } from "./tank-log-figure.ts";
export { temperatureTable } from "./temperature-table.ts";
export { type FigureChannel, figureWidth, palette } from "./theme.ts";
export { todayFigure } from "./today-figure.ts";
export { trendFigure } from "./trend-figure.ts";
export { uncertaintyBudgetTable } from "./uncertainty-budget-table.ts";
export { type NamedBudget, uncertaintyShareFigure } from "./uncertainty-share-figure.ts";
export { attentionTable, changeTable } from "./verdict-tables.ts";
export { verdictLines, verdictMarkdown } from "./verdict-words.ts";
export { washResidualFigure } from "./wash-residual.ts";
export { washStagesFigure } from "./wash-stages-figure.ts";
export { workTable } from "./work-table.ts";
