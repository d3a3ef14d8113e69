/**
 * A run rule that looks only at the zones readings fall in, in standard deviations from the centre
 * line. (Rules on rising, falling or alternating readings compare neighbours and are not of this kind.)
 */
export type ZoneRule =
  | {
      /** `hits` of `window` readings in a row beyond `sigmas` on the same side, the last one included. */
      readonly pattern: "beyond";
      readonly hits: number;
      readonly window: number;
      readonly sigmas: number;
    }
  | {
      /** `hits` readings in a row closer to the centre line than `sigmas`. */
      readonly pattern: "within";
      readonly hits: number;
      readonly sigmas: number;
    }
  | {
      /** `hits` readings in a row farther from the centre line than `sigmas`, on either side or on both. */
      readonly pattern: "outside";
      readonly hits: number;
      readonly sigmas: number;
      readonly bothSides: boolean;
    };

/** One point beyond the control limits: Nelson's test 1, the handbook's first. */
export const beyondThreeSigma: ZoneRule = { pattern: "beyond", hits: 1, window: 1, sigmas: 3 };

/**
 * The four zone tests of the Western Electric Statistical Quality Control Handbook (1956).
 *
 * Source: Western Electric, Statistical Quality Control Handbook, 1956, pp. 25–27.
 */
export const westernElectricZoneRules: readonly ZoneRule[] = [
  beyondThreeSigma,
  { pattern: "beyond", hits: 2, window: 3, sigmas: 2 },
  { pattern: "beyond", hits: 4, window: 5, sigmas: 1 },
  { pattern: "beyond", hits: 8, window: 8, sigmas: 0 },
];

/**
 * Those of Nelson's eight tests that look at zones: 1, 2, 5, 6, 7 and 8. Tests 3 (six rising or
 * falling) and 4 (fourteen alternating) compare neighbours; see `risingRunLength` and
 * `alternatingRunLength`.
 *
 * Source: L. S. Nelson, Journal of Quality Technology 16 (1984) 237–239.
 */
export const nelsonZoneRules: readonly ZoneRule[] = [
  beyondThreeSigma,
  { pattern: "beyond", hits: 9, window: 9, sigmas: 0 },
  { pattern: "beyond", hits: 2, window: 3, sigmas: 2 },
  { pattern: "beyond", hits: 4, window: 5, sigmas: 1 },
  { pattern: "within", hits: 15, sigmas: 1 },
  { pattern: "outside", hits: 8, sigmas: 1, bothSides: true },
];
