import type { RateModel } from "../rate/rate-model.ts";

/** One concentrate of a developer that comes in parts: `"1+1+100"` has two. */
export interface DeveloperPart {
  /** `"part A"`. */
  readonly name: string;
  /** What is left of it, mL. */
  readonly bottleMl: number;
  /** Least of it for one film of the trade's size, mL. */
  readonly minimumStockMlPerFilm?: number;
}

/** A black-and-white developer and what is left of it. */
export interface SessionDeveloper {
  readonly name: string;
  /** Ratio such as `"1+9"`, or `"stock"`. */
  readonly dilution: string;
  /** One-shot: poured away after each batch. Re-used: the working solution goes back. */
  readonly use: "one-shot" | "re-used";
  /** One-shot: stock or concentrate left, mL. Re-used: working solution, mL. Left out with `parts`. */
  readonly bottleMl?: number;
  /** Least stock or concentrate for one film of the trade's size, mL. Left out with `parts`. */
  readonly minimumStockMlPerFilm?: number;
  /** One-shot, of several concentrates: a bottle for each, in the order of the dilution. */
  readonly parts?: readonly DeveloperPart[];
  /** Temperature the films' times belong to, °C; default the rate model's, or 20. */
  readonly referenceTemperatureC?: number;
  /** Without one, the default model is used and the answer's range shown. */
  readonly rateModel?: RateModel;
  /** Re-used: longer by so many per cent for each film already developed in it; default 10. */
  readonly timeIncreasePercentPerFilm?: number;
  /** Re-used: films of the trade's size a litre can develop. */
  readonly capacityFilmsPerL?: number;
  readonly filmsDone?: number;
  /** Use-by date, `"2025-06-30"`. */
  readonly expiresOn?: string;
}
