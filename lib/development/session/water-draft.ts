import { requireAgitation } from "./agitation.ts";
import type { RecipeStep } from "./process-recipe.ts";
import type { ReadSession } from "./read-session.ts";
import type { ActionDraft, BathTimes, StepDraft } from "./step-draft.ts";

/** Below this a change of water is not worth its pouring, s between filling and emptying. */
const SHORTEST_STAND_S = 20;

/**
 * How often the water is changed in a wash of a fixed length: once a minute in place of running
 * water (common practice), never so often that it only pours; 0 means running water.
 */
export function waterChanges(step: RecipeStep, { handling, tank, request }: ReadSession): number {
  const minutes = step.minutes ?? 0;
  const still = ["pre-wash", "rinse"].includes(step.bath) || !/wash$/.test(step.bath);
  if (still || tank.open) return 1;
  if (request.wash?.by === "flow") return 0;
  const { pourInS, pourOutS } = handling;
  const most = (pourInS + minutes * 60) / (pourInS + pourOutS + SHORTEST_STAND_S);
  return Math.max(1, Math.min(Math.round(minutes), Math.floor(most)));
}

/** A wash of a fixed length by several changes of water, or in running water. */
export function waterDraft(
  step: RecipeStep,
  session: ReadSession,
  bath: BathTimes,
  changes: number,
): StepDraft {
  const { pourInS, pourOutS } = session.handling;
  const lengthS = pourInS + bath.timeS;
  const at = bath.temperatureC === null ? "" : ` at ${bath.temperatureC.toFixed(1)} °C`;
  const scheme = requireAgitation("planSession", "agitation", step.agitation);
  const how = scheme.initialS === null ? "agitate all the time" : `agitate ${scheme.initialS} s`;
  const startOf = (change: number) => Math.round(((change - 1) * lengthS) / changes);
  const out = `pour out ${step.bath}: ${bath.after}`;
  const run = `${step.bath}: run water${at} through the tank, the films covered`;
  const running: readonly ActionDraft[] = [
    { afterS: 0, text: run },
    { afterS: lengthS - pourOutS, text: out },
  ];
  const filled = Array.from({ length: changes }, (_, i): readonly ActionDraft[] => {
    const change = i + 1;
    const timerS = startOf(change + 1) - startOf(change) - pourInS - pourOutS;
    const fill = `${step.bath}: fill with ${bath.volumeMl} mL water${at}, ${how}: change ${change} of ${changes}`;
    return [
      { afterS: startOf(change), text: fill },
      { afterS: startOf(change) + pourInS + timerS, timerS, text: out },
    ];
  }).flat();
  const actions = changes === 0 ? [...running] : filled;
  const light = bath.lightsAfterS;
  if (light !== undefined && light !== null) {
    const text = "the lid may come off from here; then lift and turn, do not invert";
    actions.push({ afterS: Math.min(pourInS + light, lengthS), text });
    actions.sort((a, b) => a.afterS - b.afterS);
  }
  return {
    bath: step.bath,
    lengthS,
    temperatureC: bath.temperatureC,
    toleranceC: step.toleranceC,
    volumeMl: changes === 0 ? null : bath.volumeMl,
    agitation: changes === 0 ? "running water" : `${changes} changes`,
    agitationMarks: [],
    dark: false,
    actions,
    cautions: [],
  };
}
