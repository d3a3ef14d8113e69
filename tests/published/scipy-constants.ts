import { celsiusFromFahrenheit, convertVolume, type VolumeUnit } from "wetside/units";
import type { Computed } from "./run.ts";

const inMl = ({ from }: { readonly from: VolumeUnit }) => convertVolume(1, from, "mL");

export const computed: Computed = {
  usGallon: inMl,
  imperialGallon: inMl,
  usFluidOunce: inMl,
  imperialFluidOunce: inMl,
  fahrenheit: ({ temperaturesF }: { readonly temperaturesF: readonly number[] }) =>
    temperaturesF.map(celsiusFromFahrenheit),
};
