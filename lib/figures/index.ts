export type { ChartEvent } from "./chart-events.ts";
export { type ControlChartOptions, controlChartFigure } from "./control-chart.ts";
export { controlExplorer } from "./control-explorer.ts";
export { cusumFigure } from "./cusum-figure.ts";
export { ewmaFigure } from "./ewma-figure.ts";
export {
  type DisplayBundle,
  displayedAs,
  type JsonObject,
  type PlotlyFigure,
  plotlyFigure,
  type VegaLiteFigure,
  vegaLiteFigure,
} from "./figure.ts";
export { individualsFigure } from "./individuals-figure.ts";
export { type NearestLimit, nearestLimit } from "./nearest-limit.ts";
export { sessionSheet } from "./session-sheet.ts";
export {
  sessionBatchTable,
  sessionBottleTable,
  sessionDevelopmentTable,
} from "./session-tables.ts";
export { sessionTimeline } from "./session-timeline.ts";
export { type Table, type TableColumn, table } from "./table.ts";
export { type FigureChannel, figureWidth, palette } from "./theme.ts";
export { todayFigure } from "./today-figure.ts";
export { attentionTable, changeTable, signalTable } from "./verdict-tables.ts";
export { verdictLines, verdictMarkdown } from "./verdict-words.ts";
export { washResidualFigure } from "./wash-residual.ts";
