import { areaRateFromFilmLength, convertLength } from "wetside/units";
import type { Computed } from "./run.ts";

const perArea = ({ volumeMl }: { readonly volumeMl: number }) =>
  areaRateFromFilmLength({ volumeMl, lengthM: convertLength(100, "ft", "m"), widthMm: 35 });

export const computed: Computed = {
  developer: perArea,
  stop: perArea,
  wash: perArea,
  accelerator: perArea,
};
