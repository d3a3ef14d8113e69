import { InputError } from "../input/index.ts";

/** Words that mean two different things, and what to write instead. */
const AMBIGUOUS: Readonly<Record<string, string>> = {
  gallon: '"usGallon" (3785.411784 mL) or "imperialGallon" (4546.09 mL)',
  quart: '"usQuart" (946.352946 mL) or "imperialQuart" (1136.5225 mL)',
  pint: '"usPint" (473.176473 mL) or "imperialPint" (568.26125 mL)',
  fluidounce: '"usFluidOunce" (29.5735295625 mL) or "imperialFluidOunce" (28.4130625 mL)',
  fluiddram: '"usFluidDram" (3.6966911953125 mL) or "imperialFluidDram" (3.5516328125 mL)',
  minim: '"usMinim" (0.061611519921875 mL) or "imperialMinim" (0.05919388020833 mL)',
};

const SHORT: Readonly<Record<string, string>> = {
  gal: "gallon",
  gallons: "gallon",
  qt: "quart",
  quarts: "quart",
  pt: "pint",
  pints: "pint",
  floz: "fluidounce",
  oz: "fluidounce",
  ounce: "fluidounce",
  ounces: "fluidounce",
  fluidounces: "fluidounce",
  dram: "fluiddram",
  drams: "fluiddram",
  minims: "minim",
};

/** Refuses a volume's name that is one size in the United States and another in Britain. */
export function refuseAmbiguousVolume(where: string, argument: string, name: unknown): void {
  if (typeof name !== "string") return;
  const bare = name.toLowerCase().replace(/[^a-z]/g, "");
  const advice = AMBIGUOUS[SHORT[bare] ?? bare];
  if (advice !== undefined) throw new InputError(where, argument, name, `write ${advice}`);
}
