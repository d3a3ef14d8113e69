/** Where the scatter of a gauge study comes from, as standard deviations in the unit of the readings. */
export interface GaugeStudy {
  readonly method: "average and range" | "analysis of variance";
  /** Repeatability: the same operator reads the same patch again. */
  readonly repeatabilitySd: number;
  /** Reproducibility: other operators read the same patch. */
  readonly reproducibilitySd: number;
  /** Both together: all of the gauge. */
  readonly gaugeSd: number;
  /** The patches themselves. */
  readonly patchSd: number;
  readonly totalSd: number;
  /** Each as a share of the total standard deviation; the shares do not add up to 1, the squares do. */
  readonly shareOfTotal: {
    readonly repeatability: number;
    readonly reproducibility: number;
    readonly gauge: number;
    readonly patches: number;
  };
  /** √2·patches/gauge: how many groups of patches the gauge tells apart; 2⁵³ − 1 for a gauge without any scatter. */
  readonly distinctCategories: number;
}

export function gaugeStudy(
  method: GaugeStudy["method"],
  repeatabilitySd: number,
  reproducibilitySd: number,
  patchSd: number,
): GaugeStudy {
  const gaugeSd = Math.hypot(repeatabilitySd, reproducibilitySd);
  const totalSd = Math.hypot(gaugeSd, patchSd);
  const share = (sd: number) => (totalSd === 0 ? 0 : sd / totalSd);
  return {
    method,
    repeatabilitySd,
    reproducibilitySd,
    gaugeSd,
    patchSd,
    totalSd,
    shareOfTotal: {
      repeatability: share(repeatabilitySd),
      reproducibility: share(reproducibilitySd),
      gauge: share(gaugeSd),
      patches: share(patchSd),
    },
    distinctCategories: gaugeSd === 0 ? Number.MAX_SAFE_INTEGER : (Math.SQRT2 * patchSd) / gaugeSd,
  };
}
