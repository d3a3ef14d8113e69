import { refuseAmbiguousVolume } from "./ambiguous-unit.ts";
import { convertWithin, type UnitTable } from "./exact-ratio.ts";

// In millilitres. 1 in = 2.54 cm exactly, US gallon = 231 in³, imperial gallon = 4.54609 L exactly.
const US_GALLON = 3_785_411_784n;
const IMPERIAL_GALLON = 454_609n;

const VOLUMES = {
  mL: [1n, 1n],
  cL: [10n, 1n],
  dL: [100n, 1n],
  L: [1000n, 1n],
  m3: [1_000_000n, 1n],
  usGallon: [US_GALLON, 1_000_000n],
  usQuart: [US_GALLON, 4_000_000n],
  usPint: [US_GALLON, 8_000_000n],
  usFluidOunce: [US_GALLON, 128_000_000n],
  usFluidDram: [US_GALLON, 1_024_000_000n],
  usMinim: [US_GALLON, 61_440_000_000n],
  imperialGallon: [IMPERIAL_GALLON, 100n],
  imperialQuart: [IMPERIAL_GALLON, 400n],
  imperialPint: [IMPERIAL_GALLON, 800n],
  imperialFluidOunce: [IMPERIAL_GALLON, 16_000n],
  imperialFluidDram: [IMPERIAL_GALLON, 128_000n],
  imperialMinim: [IMPERIAL_GALLON, 7_680_000n],
} as const satisfies UnitTable;

/** Units of volume. US and imperial names never stand alone, for they differ by up to a fifth. */
export type VolumeUnit = keyof typeof VOLUMES;

/**
 * A volume in another unit.
 *
 * value · size(from) / size(to), with sizes exact: 1 usGallon = 3785.411784 mL,
 * 1 imperialGallon = 4546.09 mL, and their binary parts.
 *
 * @param value any finite number
 * @param from its unit; a bare `gallon`, `pint` or `fl oz` is refused with both meanings spelled out
 * @param to the unit wanted
 * @returns the volume in `to`
 * @throws InputError for a number that is not finite, an unknown unit, or an ambiguous one
 *
 * @example
 * convertVolume(1, "usGallon", "mL") // => 3785.411784
 * convertVolume(20, "imperialFluidOunce", "mL") // => 568.26125
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8; NIST Handbook 44, Appendix C.
 */
export function convertVolume(value: number, from: VolumeUnit, to: VolumeUnit): number {
  refuseAmbiguousVolume("convertVolume", "from", from);
  refuseAmbiguousVolume("convertVolume", "to", to);
  return convertWithin("convertVolume", VOLUMES, value, from, to);
}
