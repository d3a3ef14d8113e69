import {
  type AreaReading,
  type AreaUnit,
  convertArea,
  convertLength,
  formatAreaM2,
  productionAreaM2,
} from "wetside/units";
import type { Computed } from "./run.ts";

interface Prints {
  readonly inches: readonly (readonly [number, number])[];
  readonly unit: AreaUnit;
}

const prints = ({ inches, unit }: Prints) =>
  inches.map(([width, length]) => convertArea(formatAreaM2(`${width}x${length}in`), "m2", unit));

const one = ({ format, reading }: { readonly format: string; readonly reading: AreaReading }) =>
  formatAreaM2(format, { reading });

export const computed: Computed = {
  "prints-ft2": prints,
  "prints-m2": prints,
  "trade-135": one,
  "strip-135": one,
  "roll-120": one,
  "roll-220": one,
  "hundred-feet": ({ feet }: { readonly feet: number }) => {
    const count = convertLength(feet, "ft", "m");
    return productionAreaM2([{ format: "35mm-metre", count }]).areaM2;
  },
};
