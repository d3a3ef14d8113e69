/** A run rule by family and number, as its publication counts them. */
export type RunRuleId =
  | "nelson-1"
  | "nelson-2"
  | "nelson-3"
  | "nelson-4"
  | "nelson-5"
  | "nelson-6"
  | "nelson-7"
  | "nelson-8"
  | "western-electric-1"
  | "western-electric-2"
  | "western-electric-3"
  | "western-electric-4";

/** One completed pattern. */
export interface RunRuleSignal {
  readonly rule: RunRuleId;
  /** Position of the reading that completes the pattern. */
  readonly at: number;
  /** Positions of the readings that led to it, oldest first. */
  readonly rows: readonly number[];
  readonly side: "above" | "below" | "both";
  /** What happened, in one sentence. */
  readonly sentence: string;
}

/** The eight tests of Nelson 1984, in his order. */
export const nelsonRules: readonly RunRuleId[] = [
  "nelson-1",
  "nelson-2",
  "nelson-3",
  "nelson-4",
  "nelson-5",
  "nelson-6",
  "nelson-7",
  "nelson-8",
];

/** The four rules of the Western Electric handbook of 1956, in its order. */
export const westernElectricRules: readonly RunRuleId[] = [
  "western-electric-1",
  "western-electric-2",
  "western-electric-3",
  "western-electric-4",
];
