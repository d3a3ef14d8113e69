export type {
  MixingCost,
  MixingPrice,
  MixingPriceList,
  MixingSheet,
  MixingStep,
  MixingUnit,
} from "./mixing-sheet.ts";
