import rules from "../../../data/session/wash-rules.json" with { type: "json" };

/** A rule of fixing and washing, with where it comes from. */
export interface SourcedRule {
  readonly source: string;
  readonly howObtained: string;
}

/** The rules that fixing and washing rest on; each carries its source. */
export interface WashRules {
  readonly thiosulfateLimit: SourcedRule & { readonly gPerM2: number };
  readonly halving: SourcedRule & { readonly halfTimeMin: number };
  readonly coldWater: SourcedRule & {
    readonly points: readonly { readonly temperatureF: number; readonly factor: number }[];
  };
  readonly coldFixer: SourcedRule & { readonly doublesPerC: number; readonly belowC: number };
  readonly washAid: SourcedRule & {
    readonly rinseS: number;
    readonly aidS: number;
    readonly washMin: number;
    readonly washWithoutAidMin: number;
  };
  readonly changeEveryMin: SourcedRule & { readonly minutes: number };
  readonly fillAndDump: SourcedRule & {
    readonly carriedMlPerM2: number;
    readonly tankKeepsMl: number;
  };
  readonly fixing: SourcedRule & {
    readonly ordinaryMultiple: number;
    readonly modernMultiple: number;
    readonly exhaustedAt: number;
  };
  readonly fixerThiosulfate: SourcedRule & { readonly gPerL: number };
}

/**
 * The published rules of fixing and washing that the session uses, with their sources.
 *
 * @example
 * washRules.thiosulfateLimit.gPerM2 // => 0.014
 *
 * Source: data/session/wash-rules.json, by record.
 */
export const washRules: WashRules = rules;
