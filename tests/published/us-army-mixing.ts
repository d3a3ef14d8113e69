import { acidToStrength, diluteToStrength } from "wetside/solutions";
import { convertVolume } from "wetside/units";
import type { Computed } from "./run.ts";

interface Mix {
  readonly strong: number;
  readonly target: number;
  readonly total: number;
}

const ounces = (count: number) => convertVolume(count, "usFluidOunce", "mL");
const inOunces = (volumeMl: number) => convertVolume(volumeMl, "mL", "usFluidOunce");

const byVolume = ({ strong, target, total }: Mix) =>
  diluteToStrength({ strength: strong, target, totalMl: ounces(total) });

export const computed: Computed = {
  "glacial-by-volume": (mix: Mix) => inOunces(byVolume(mix).stockMl),
  "water-by-volume": (mix: Mix) => inOunces(byVolume(mix).waterMl),
  "glacial-by-mass": ({ strong, target, total }: Mix) =>
    inOunces(
      acidToStrength({
        substance: "acetic acid",
        strongPercent: strong,
        targetPercent: target,
        totalMl: ounces(total),
      }).strongMl,
    ),
  "two-day-top-up": ({ percent }: { readonly percent: number }) =>
    convertVolume(percent / 100, "usGallon", "usFluidOunce"),
};
