export * from "./contrast/index.ts";
export * from "./drift/index.ts";
export * from "./fitting/index.ts";
export * from "./rate/index.ts";
export {
  type AgitationMark,
  type AgitationScheme,
  agitationMarks,
  agitationSchemes,
} from "./session/agitation.ts";
export {
  type ClockMoment,
  type ClockTime,
  clockAfter,
  parseClockTime,
} from "./session/clock-time.ts";
export {
  type DevelopingTank,
  developingTank,
  developingTanks,
  type TankSpiral,
} from "./session/developing-tank.ts";
export { type FixerState, type FixingTime, fixingTime } from "./session/fixing-time.ts";
export {
  type PackedBatch,
  type PackedBatches,
  type PackingKind,
  packBatches,
} from "./session/pack-batches.ts";
export { planSession } from "./session/plan-session.ts";
export {
  type ProcessRecipe,
  processRecipe,
  processRecipes,
  type RecipeStep,
  type SessionProcess,
} from "./session/process-recipe.ts";
export type { DeveloperPart, SessionDeveloper } from "./session/session-developer.ts";
export type { SessionHandling } from "./session/session-handling.ts";
export { sessionLines } from "./session/session-lines.ts";
export type {
  RinseWater,
  SessionBottle,
  SessionFilm,
  SessionRequest,
  SessionTemperatures,
  SessionWash,
} from "./session/session-request.ts";
export type {
  Session,
  SessionAction,
  SessionBatch,
  SessionBottleLeft,
  SessionDevelopment,
  SessionDrying,
  SessionStep,
  SessionStock,
} from "./session/session-result.ts";
export {
  coldFixerFactor,
  coldWashFactor,
  fillAndDumpFraction,
  runningWashFraction,
} from "./session/wash-factors.ts";
export {
  type FilmWash,
  type FilmWashResult,
  washByChanges,
  washByFlow,
} from "./session/wash-film.ts";
export { washChangesNeeded, washMinutesNeeded } from "./session/wash-needed.ts";
export { type SourcedRule, type WashRules, washRules } from "./session/wash-rules.ts";
export * from "./tempering/index.ts";
