import sensitivityData from "../../../data/replenishment/rate-sensitivity.json" with {
  type: "json",
};
import { InputError } from "../../input/index.ts";

/** How far one parameter settles from its aim for a rate 100 % too high; made up. */
interface IllustrativeRecord {
  readonly process: string;
  /** Id of the parameter in the process specification. */
  readonly parameter: string;
  readonly densityPerUnitRate: {
    readonly red: number;
    readonly green: number;
    readonly blue: number;
  };
  readonly source: string;
  readonly howObtained: string;
}

/** A sensitivity to try the method with, marked as what it is. */
export interface IllustrativeSensitivity {
  readonly process: string;
  readonly channels: readonly {
    readonly parameter: string;
    readonly colour: "red" | "green" | "blue";
  }[];
  /** Density per 100 % of rate, one number a channel, as `rateChange` takes it. */
  readonly sensitivity: readonly number[];
  readonly howObtained: "illustrative";
  readonly warnings: readonly string[];
}

const records: readonly IllustrativeRecord[] = sensitivityData.processes;

/**
 * A default for how the densities answer to the developer's replenishment rate, where a lab has no
 * sensitivity of its own yet. It is illustrative: good for a class, an exercise or a first look, not
 * for setting a pump. `rateSensitivity` learns the lab's own.
 *
 * @param process id of a process specification, `"colour-negative"` or `"colour-paper"`
 * @param parameters ids of parameters; default `["ld", "hdLessLd"]`
 * @returns density per 100 % of rate, parameter by parameter in red, green, blue, and a warning that
 *   says what the numbers are
 * @throws InputError for a process or parameter without an entry
 *
 * @example
 * illustrativeSensitivity("colour-negative").sensitivity // => [0.44, 0.48, 0.54, 0.24, 0.26, 0.28]
 *
 * Source: none; the sizes are made up, the signs follow Kodak publication CIS-254, p. 6.
 */
export function illustrativeSensitivity(
  process: string,
  parameters: readonly string[] = ["ld", "hdLessLd"],
): IllustrativeSensitivity {
  const where = "illustrativeSensitivity";
  const known = records.filter((each) => each.process === process);
  if (known.length === 0) {
    const names = [...new Set(records.map((each) => `"${each.process}"`))].join(", ");
    const advice = `write one of ${names}; for another process learn your own with rateSensitivity`;
    throw new InputError(where, "process", process, advice);
  }
  if (!Array.isArray(parameters) || parameters.length === 0) {
    throw new InputError(where, "parameters", parameters, 'write a list like ["ld", "hdLessLd"]');
  }
  const wanted = parameters.map((parameter) => {
    const found = known.find((each) => each.parameter === parameter);
    if (found !== undefined) return found;
    const names = known.map((each) => `"${each.parameter}"`).join(", ");
    throw new InputError(where, "parameters", parameter, `write some of ${names}`);
  });
  const colours = ["red", "green", "blue"] as const;
  return {
    process,
    channels: wanted.flatMap(({ parameter }) => colours.map((colour) => ({ parameter, colour }))),
    sensitivity: wanted.flatMap(({ densityPerUnitRate: s }) => colours.map((colour) => s[colour])),
    howObtained: "illustrative",
    warnings: [
      "This sensitivity is illustrative, not measured: an error of the rate found with it may be off by as much as the sensitivity is. Learn your own from rate changes in your history (rateSensitivity) or from a step test (planStepTest) before a pump is set by it.",
    ],
  };
}
