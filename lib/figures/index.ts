export {
  type DisplayBundle,
  displayedAs,
  type JsonObject,
  type PlotlyFigure,
  plotlyFigure,
  type VegaLiteFigure,
  vegaLiteFigure,
} from "./figure.ts";
export { type Table, type TableColumn, table } from "./table.ts";
export { type FigureChannel, figureWidth, palette } from "./theme.ts";
