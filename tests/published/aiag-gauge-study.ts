import {
  type GaugeReadings,
  type GaugeStudy,
  gaugeStudyByAnova,
  gaugeStudyByRange,
} from "wetside/control";
import type { Computed } from "./run.ts";

type Study = { readonly readings: GaugeReadings };

const squares = (study: Study, i: number) =>
  gaugeStudyByAnova(study.readings).lines[i]?.sumOfSquares ?? Number.NaN;

function sds({
  repeatabilitySd,
  reproducibilitySd,
  gaugeSd,
  patchSd,
  totalSd,
}: GaugeStudy): number[] {
  return [repeatabilitySd, reproducibilitySd, gaugeSd, patchSd, totalSd];
}

export const computed: Computed = {
  "ss-part": (study: Study) => squares(study, 0),
  "ss-operator": (study: Study) => squares(study, 1),
  "ss-interaction": (study: Study) => squares(study, 2),
  "ss-repeats": (study: Study) => squares(study, 3),
  "var-repeat": ({ readings }: Study) => gaugeStudyByAnova(readings).repeatabilitySd ** 2,
  "var-gauge": ({ readings }: Study) => gaugeStudyByAnova(readings).gaugeSd ** 2,
  "var-part": ({ readings }: Study) => gaugeStudyByAnova(readings).patchSd ** 2,
  "var-repro": ({ readings }: Study) => gaugeStudyByAnova(readings).reproducibilitySd ** 2,
  ms: ({ readings }: Study) => gaugeStudyByAnova(readings).lines.map((line) => line.meanSquare),
  p: ({ readings }: Study) => gaugeStudyByAnova(readings).interactionPValue,
  "pooled-sd": ({ readings }: Study) => sds(gaugeStudyByAnova(readings)),
  "kept-sd": ({ readings }: Study) => sds(gaugeStudyByAnova(readings, { poolAbove: 1 })),
  ndc: ({ readings }: Study) => Math.floor(gaugeStudyByAnova(readings).distinctCategories),
  "range-sd": ({ readings }: Study) => sds(gaugeStudyByRange(readings)),
  "range-share": ({ readings }: Study) => {
    const { repeatability, reproducibility, gauge, patches } =
      gaugeStudyByRange(readings).shareOfTotal;
    return [repeatability, reproducibility, gauge, patches].map((share) => 100 * share);
  },
  "range-ndc": ({ readings }: Study) => Math.floor(gaugeStudyByRange(readings).distinctCategories),
};
