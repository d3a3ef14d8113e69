import { convertVolume, type VolumeUnit } from "./volume.ts";

type Size = "Gallon" | "Quart" | "Pint" | "FluidOunce";

/** Words for volumes that mean one thing in the United States and another in Britain. */
const TWO_SIZES: Readonly<Record<string, { readonly size: Size; readonly words: string }>> = {
  gal: { size: "Gallon", words: "gallons" },
  gallon: { size: "Gallon", words: "gallons" },
  qt: { size: "Quart", words: "quarts" },
  quart: { size: "Quart", words: "quarts" },
  pt: { size: "Pint", words: "pints" },
  pint: { size: "Pint", words: "pints" },
  floz: { size: "FluidOunce", words: "fluid ounces" },
  oz: { size: "FluidOunce", words: "fluid ounces" },
  ounce: { size: "FluidOunce", words: "fluid ounces" },
  fluidounce: { size: "FluidOunce", words: "fluid ounces" },
};

const METRIC: Readonly<Record<string, VolumeUnit>> = {
  l: "L",
  lt: "L",
  ltr: "L",
  litre: "L",
  liter: "L",
  ml: "mL",
  cc: "mL",
  millilitre: "mL",
  milliliter: "mL",
  cl: "cL",
  dl: "dL",
};

/**
 * What to write in place of a volume that was typed with a unit of its own, where a number in litres
 * or millilitres belongs: "5 gal" has two answers, "500 ml" one.
 *
 * @param typed whatever was typed
 * @param unit what the number should have been in
 * @returns a piece of advice with the number to write; undefined for anything but a number followed by
 *   a unit of volume
 *
 * @example
 * typedVolumeAdvice("5 gal", "L") // => "write litres: 18.927 for US gallons, 22.73 for imperial gallons"
 *
 * Source: as `convertVolume`.
 */
export function typedVolumeAdvice(typed: unknown, unit: "mL" | "L"): string | undefined {
  if (typeof typed !== "string") return undefined;
  const match = /^\s*(\d+(?:[.,]\d+)?)\s*(us|u\.s\.|imp\w*\.?|uk)?\s*([a-z. ]+)$/i.exec(typed);
  const [, digits = "", system, name = ""] = match ?? [];
  const amount = Number(digits.replace(",", "."));
  // "1,500 L" is one and a half here and fifteen hundred there.
  if (match === null || !Number.isFinite(amount) || /,\d{3}$/.test(digits)) return undefined;
  const word = name.toLowerCase().replace(/[^a-z]/g, "");
  const singular = word.replace(/(?<=..)s$/, "");
  const inUnit = (from: VolumeUnit) => Number(convertVolume(amount, from, unit).toPrecision(5));
  const inWords = unit === "L" ? "litres" : "millilitres";
  const metric = METRIC[singular] ?? METRIC[word];
  if (metric !== undefined) return `write ${inWords}, the number alone: ${inUnit(metric)}`;
  const two = TWO_SIZES[singular] ?? TWO_SIZES[word];
  if (two === undefined) return undefined;
  const { size, words } = two;
  const us = `${inUnit(`us${size}`)} for US ${words}`;
  const imperial = `${inUnit(`imperial${size}`)} for imperial ${words}`;
  if (system === undefined) return `write ${inWords}: ${us}, ${imperial}`;
  return `write ${inWords}: ${/^u\.?s/i.test(system) ? us : imperial}`;
}
