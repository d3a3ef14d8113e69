import type { ParameterSeries, SeriesCharts } from "../../control/index.ts";
import { requireEntries } from "../../input/index.ts";

/** A series that has all its statistical charts, with how near its latest reading is to a limit. */
export interface NearestLimit {
  readonly series: ParameterSeries;
  readonly individuals: NonNullable<SeriesCharts["individuals"]>;
  readonly ewma: NonNullable<SeriesCharts["ewma"]>;
  readonly cusum: NonNullable<SeriesCharts["cusum"]>;
  /** Latest deviation as a share of the process limit on its side (action, else control). */
  readonly share: number;
  /** `"LD (speed) red: 121 % of its process limit"`. */
  readonly words: string;
}

/**
 * Of the series that have statistical charts, the one whose latest reading is the largest share of
 * its process limit: the one whose charts to look at first.
 *
 * @param charts what `controlCharts` gave for one or several processes
 * @returns the series with its charts, or `null` if none has both charts and a process limit
 *
 * @example
 * nearestLimit([]) // => null
 */
export function nearestLimit(charts: readonly SeriesCharts[]): NearestLimit | null {
  requireEntries("nearestLimit", "charts", charts);
  let nearest: NearestLimit | null = null;
  for (const { series, individuals, ewma, cusum } of charts) {
    const share = shareOfLimit(series);
    if (individuals === null || ewma === null || cusum === null || share === undefined) continue;
    if (nearest !== null && share <= nearest.share) continue;
    const name = series.colour === null ? series.name : `${series.name} ${series.colour}`;
    const words = `${name}: ${Math.round(100 * share)} % of its process limit`;
    nearest = { series, individuals, ewma, cusum, share, words };
  }
  return nearest;
}

function shareOfLimit({ deviations, limits }: ParameterSeries): number | undefined {
  const latest = deviations.at(-1);
  const limit = limits.action ?? limits.control;
  if (latest === undefined || limit === null) return undefined;
  const reach = latest < 0 ? limit.lower : limit.upper;
  return reach === null || reach === 0 ? undefined : Math.abs(latest / reach);
}
