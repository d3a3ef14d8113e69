export { electrolyticSilver, hoursToPlate } from "./electrolytic-recovery.ts";
export { type MetallicExchange, metallicExchange } from "./metallic-exchange.ts";
export {
  type CoatedSilver,
  coatedSilver,
  type RecoveryGoal,
  recoveryGoals,
  silverCautions,
  silverToxicityThreshold,
} from "./silver-data.ts";
export { type SilverDischarge, silverDischarge } from "./silver-discharge.ts";
export type {
  InLineRecovery,
  SilverDay,
  SilverDays,
  SilverFixer,
  SilverLog,
} from "./silver-fixer.ts";
export { silverOverDays } from "./silver-over-days.ts";
export { silverRemoved } from "./silver-removed.ts";
export { type SilverTitration, silverByTitration } from "./silver-titration.ts";
