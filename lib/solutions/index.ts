export { acidSheet } from "./blending/acid-sheet.ts";
export { type AcidMix, acidToStrength } from "./blending/acid-to-strength.ts";
export { type BlendByMass, blendByMass, type PortionByMass } from "./blending/blend-by-mass.ts";
export { type Blend, blendToStrength } from "./blending/blend-to-strength.ts";
export { blendVolumes } from "./blending/blend-volumes.ts";
export { correctTank, type TankCorrection, type TankToCorrect } from "./blending/correct-tank.ts";
export {
  type DensityModel,
  type DensityTable,
  densityModels,
  densityTables,
} from "./blending/density-data.ts";
export { diluteToStrength } from "./blending/dilute-to-strength.ts";
export { massPercentFromDensity } from "./blending/mass-percent-from-density.ts";
export { strengthAfterAdditions } from "./blending/repeated-addition.ts";
export { type SolutionDensity, solutionDensity } from "./blending/solution-density.ts";
export { waterDensityGPerMl } from "./blending/water-density.ts";
export { wholeParts } from "./blending/whole-parts.ts";
export { type AreaToPhLimit, areaToPhLimit } from "./buffers/area-to-ph-limit.ts";
export {
  type BathPhOptions,
  type BathPhPoint,
  bathPhAgainstArea,
} from "./buffers/bath-ph-against-area.ts";
export { bufferCapacity } from "./buffers/buffer-capacity.ts";
export { type BufferMixture, bufferPh } from "./buffers/buffer-ph.ts";
export { type BathAfterCarryIn, bathAfterCarryIn, type CarryInBath } from "./buffers/carry-in.ts";
export { daviesActivityCoefficient } from "./buffers/davies.ts";
export {
  mixSolutions,
  pureWater,
  type SolutionComposition,
  type SolutionSource,
  solutionComposition,
} from "./buffers/solution-composition.ts";
export { type SolutionPh, solutionPh } from "./buffers/solution-ph.ts";
export { type StopBathCapacity, stopBathCapacity } from "./buffers/stop-bath-capacity.ts";
export { debyeHuckelSlope, waterPkw } from "./buffers/water-constants.ts";
export { acidPk, type WeakAcid, weakAcids } from "./buffers/weak-acid.ts";
export {
  type BatchesToMix,
  batchesToMix,
  type ReplenisherKit,
} from "./capacity/batches-to-mix.ts";
export { type BathCapacity, bathCapacity } from "./capacity/bath-capacity.ts";
export {
  type PublishedCapacity,
  publishedCapacities,
  type ReuseRule,
  reuseRules,
} from "./capacity/capacity-data.ts";
export {
  type FreshTankSheet,
  freshTankSheet,
  type TankComponent,
} from "./capacity/fresh-tank-sheet.ts";
export { type ReuseTime, reuseTime } from "./capacity/reuse-time.ts";
export { type ShelfForecast, shelfForecast } from "./capacity/shelf-forecast.ts";
export { type StockForecast, stockForecast } from "./capacity/stock-forecast.ts";
export { type StockLevel, stockLevels } from "./capacity/stock-levels.ts";
export { type WeekLoad, weekLoad } from "./capacity/week-load.ts";
export {
  everySheetCautions,
  type HazardClass,
  hazardClasses,
  type Incompatibility,
  incompatibilities,
} from "./cautions/caution-data.ts";
export { cautionsFor, mustNotMeet } from "./cautions/cautions-for.ts";
export { type AtomicWeight, atomicWeight } from "./chemistry/atomic-weight.ts";
export {
  type Chemical,
  type ChemicalForm,
  chemicals,
  type DissolvedIons,
  type HazardClassification,
  type SolubilityTable,
} from "./chemistry/chemical.ts";
export { type ChemicalFormula, parseChemicalFormula } from "./chemistry/chemical-formula.ts";
export {
  type ChemicalHazards,
  chemicalHazards,
  hazardStatement,
} from "./chemistry/chemical-hazards.ts";
export { type ChemicalInForm, chemicalInForm } from "./chemistry/find-chemical.ts";
export { type HazardLimit, type HazardLimits, hazardLimits } from "./chemistry/hazard-limits.ts";
export { type MolarMass, molarMass } from "./chemistry/molar-mass.ts";
export { type Solubility, solubility } from "./chemistry/solubility.ts";
export {
  type DissolvedSubstance,
  type SolutionHazards,
  solutionHazards,
} from "./chemistry/solution-hazards.ts";
export {
  type ConcentratePerFilm,
  checkConcentratePerFilm,
} from "./dilution/concentrate-per-film.ts";
export { type Dilution, type DilutionPart, dilute } from "./dilution/dilute.ts";
export {
  diluteWithGraduates,
  type MeasuredDilution,
  type MeasuredPart,
} from "./dilution/dilute-with-graduates.ts";
export { dilutionSheet } from "./dilution/dilution-sheet.ts";
export { type Graduate, graduate, graduates } from "./dilution/graduate.ts";
export { type KitPart, kitSheet } from "./dilution/kit-sheet.ts";
export { type MeasuredVolume, measureWith } from "./dilution/measure-with.ts";
export { type MostFromStock, mostFromStock } from "./dilution/most-from-stock.ts";
export { chainedRatio, ratioFromStrength, ratioStrength } from "./dilution/ratio-strength.ts";
export { type Redilution, redilute } from "./dilution/redilute.ts";
export {
  type BathFormula,
  bathFormula,
  bathFormulas,
  type FormulaIngredient,
} from "./formulas/bath-formula.ts";
export { bathHazards } from "./formulas/bath-hazards.ts";
export { type FormulaSheetOptions, formulaMixingSheet } from "./formulas/formula-mixing-sheet.ts";
export { type MetaborateFromBorax, metaborateFromBorax } from "./formulas/metaborate-from-borax.ts";
export { checkMixingOrder, inMixingOrder, type OrderFault } from "./formulas/mixing-order.ts";
export { type MixingRule, mixingRules } from "./formulas/mixing-rules.ts";
export { parseBathFormula } from "./formulas/parse-bath-formula.ts";
export { requireBathFormula } from "./formulas/require-bath-formula.ts";
export { type BatchIngredient, type FormulaBatch, scaleFormula } from "./formulas/scale-formula.ts";
export { type IngredientSolubility, solubilityCheck } from "./formulas/solubility-check.ts";
export { type Substitution, substituteChemical } from "./formulas/substitute-chemical.ts";
export { substituteInFormula } from "./formulas/substitute-in-formula.ts";
export { type WeighedMass, weighToDivision } from "./formulas/weigh-to-division.ts";
export { type HydrometerCheck, hydrometerCheck } from "./hydrometer/hydrometer-check.ts";
export {
  densityFromHydrometer,
  gravityAtReference,
  type HydrometerScale,
  hydrometerScale,
} from "./hydrometer/hydrometer-scale.ts";
export {
  type GravityPoint,
  type StrengthFromGravity,
  strengthFromGravity,
} from "./hydrometer/strength-from-gravity.ts";
export {
  type HydrometerReading,
  type HydrometerStrength,
  strengthFromHydrometer,
} from "./hydrometer/strength-from-hydrometer.ts";
export type {
  MixingCost,
  MixingPrice,
  MixingPriceList,
  MixingSheet,
  MixingStep,
  MixingUnit,
} from "./mixing-sheet.ts";
export { priceMixingSheet } from "./mixing-sheet-price.ts";
export { mixingSheetText } from "./mixing-sheet-text.ts";
