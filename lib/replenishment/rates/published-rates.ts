import rateData from "../../../data/replenishment/rates.json" with { type: "json" };

/** A replenishment rate as a source prints it. */
export interface PublishedRate {
  readonly id: string;
  readonly process: string;
  readonly bath: string;
  /** mL for an area or a length, as printed. */
  readonly printed: { readonly value: number; readonly per: "ft²" | "100 ft of 35 mm film" };
  readonly mlPerM2: number;
  readonly source: string;
  readonly howObtained: string;
  readonly note: string;
}

/** Published replenishment rates, each with its source. They belong to their chemicals and machine. */
export const publishedRates: readonly PublishedRate[] = rateData.rates as readonly PublishedRate[];
