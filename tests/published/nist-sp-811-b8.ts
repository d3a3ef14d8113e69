import {
  type AreaUnit,
  convertArea,
  convertLength,
  convertMass,
  convertMassConcentration,
  convertVolume,
  type LengthUnit,
  type MassConcentrationUnit,
  type MassUnit,
  type VolumeUnit,
} from "wetside/units";
import { type Computed, readSource } from "./run.ts";

interface Inputs {
  readonly kind: "volume" | "mass" | "length" | "area" | "concentration";
  readonly from: string;
}

function oneOf({ kind, from }: Inputs): number {
  if (kind === "volume") return convertVolume(1, from as VolumeUnit, "mL");
  if (kind === "mass") return convertMass(1, from as MassUnit, "g");
  if (kind === "length") return convertLength(1, from as LengthUnit, "mm");
  if (kind === "area") return convertArea(1, from as AreaUnit, "m2");
  return convertMassConcentration(1, from as MassConcentrationUnit, "g/L");
}

export const computed: Computed = Object.fromEntries(
  readSource("nist-sp-811-b8").checks.map(({ id }) => [id, oneOf]),
);
