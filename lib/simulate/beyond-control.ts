import {
  aimsOfBatch,
  colourNegativeProcess,
  colourPaperProcess,
  deviationsFromAim,
  type Strip,
  type StripBatch,
} from "../control/index.ts";

/** Whether a strip lies beyond a control limit of its process, by the aims of its batch. */
export function beyondControl(strip: Strip, batch: StripBatch): boolean {
  const specification = [colourNegativeProcess, colourPaperProcess].find(
    ({ id }) => id === strip.process,
  );
  if (specification === undefined) return false;
  const { parameters } = deviationsFromAim(strip, aimsOfBatch(batch), specification);
  return parameters.some(({ parameter, deviation }) => {
    const limit = specification.parameters.find(({ id }) => id === parameter)?.limits.control;
    if (deviation === null || limit === null || limit === undefined) return false;
    return (
      deviation < (limit.lower ?? Number.NEGATIVE_INFINITY) ||
      deviation > (limit.upper ?? Number.POSITIVE_INFINITY)
    );
  });
}
