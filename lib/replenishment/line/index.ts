export { counterCurrentRatio, counterCurrentResidual } from "./counter-current.ts";
export type { FallingTank } from "./falling-tanks.ts";
export { lineFlows } from "./line-flows.ts";
export type { LineDay, LineDayState, LineLog } from "./line-log.ts";
export { tankLineOverDays } from "./line-over-days.ts";
export { type LineMoment, type LineOverTime, tankLineOverTime } from "./line-over-time.ts";
export { type LineSteadyState, tankLineSteadyState } from "./line-steady-state.ts";
export type {
  ComponentInTank,
  LineComponent,
  LineTank,
  LineTankFlows,
  TankLine,
} from "./tank-line.ts";
