import { formatMinutes } from "../../units/index.ts";
import { type AgitationMark, agitationMarks, requireAgitation } from "./agitation.ts";
import type { RecipeStep } from "./process-recipe.ts";
import type { ReadSession } from "./read-session.ts";
import { bathCautions } from "./session-cautions.ts";

/** Something to do so many seconds after a step began. */
export interface ActionDraft {
  readonly afterS: number;
  /** What the timer shows by then, if one runs, s. */
  readonly timerS?: number;
  readonly text: string;
}

/** A step before it has its place in time. */
export interface StepDraft {
  readonly bath: string;
  readonly lengthS: number;
  readonly temperatureC: number | null;
  readonly toleranceC: number | null;
  readonly volumeMl: number | null;
  readonly agitation: string | null;
  readonly agitationMarks: readonly AgitationMark[];
  readonly dark: boolean;
  readonly actions: readonly ActionDraft[];
  readonly cautions: readonly string[];
}

/** How long a bath works, and what goes with it. */
export interface BathTimes {
  readonly timeS: number;
  readonly volumeMl: number;
  readonly films: number;
  readonly temperatureC: number | null;
  /** What the lines call the bath, if not by the recipe's word. */
  readonly called?: string;
  /** Where the bath goes afterwards. */
  readonly after: string;
  readonly lightsAfterS?: number | null;
  /** In open trays: still before the white light. */
  readonly dark?: boolean;
}

/** A step that is only handling: mixing, loading, hanging. */
export function handlingDraft(
  bath: string,
  lengthS: number,
  texts: readonly string[],
  dark = false,
): StepDraft {
  return {
    bath,
    lengthS,
    temperatureC: null,
    toleranceC: null,
    volumeMl: null,
    agitation: null,
    agitationMarks: [],
    dark,
    actions: texts.map((text) => ({ afterS: 0, text })),
    cautions: bathCautions(bath),
  };
}

/** A bath of a recipe: pour in, agitate, pour out. Its time runs from tank full to tank empty. */
export function bathDraft(step: RecipeStep, session: ReadSession, bath: BathTimes): StepDraft {
  const { pourInS, pourOutS } = session.handling;
  const own = step.bath === "developer" ? session.agitation : null;
  const scheme = own ?? requireAgitation("planSession", "agitation", step.agitation);
  const outS = Math.min(pourOutS, bath.timeS);
  const outAtS = bath.timeS - outS;
  const marks = agitationMarks(scheme, bath.timeS, outS);
  const within = step.toleranceC === null ? "" : ` ± ${step.toleranceC}`;
  const at = bath.temperatureC === null ? "" : `, ${bath.temperatureC.toFixed(1)}${within} °C`;
  const called = bath.called ?? step.bath;
  const actions: ActionDraft[] = [
    { afterS: 0, text: `pour in ${called}: ${bath.volumeMl} mL${at}` },
  ];
  marks.forEach(({ fromS, toS }, i) => {
    const timer = `tank full, start the timer: ${formatMinutes(bath.timeS / 60)}, agitate`;
    const start = i === 0 ? timer : "agitate";
    const text = toS - fromS >= outAtS ? `${start} all the time` : `${start} ${toS - fromS} s`;
    actions.push({ afterS: pourInS + fromS, timerS: fromS, text });
  });
  const light = bath.lightsAfterS;
  const opens = light !== undefined && light !== null;
  if (opens && light < outAtS) {
    actions.push({
      afterS: pourInS + light,
      timerS: light,
      text: "the lid may come off from here; then lift and turn, do not invert",
    });
  }
  const lid = opens && light >= outAtS ? "; then the lid may come off" : "";
  const out = `pour out ${called}: ${bath.after}${lid}`;
  actions.push({ afterS: pourInS + outAtS, timerS: outAtS, text: out });
  actions.sort((a, b) => a.afterS - b.afterS);
  return {
    bath: step.bath,
    lengthS: pourInS + bath.timeS,
    temperatureC: bath.temperatureC,
    toleranceC: step.toleranceC,
    volumeMl: bath.volumeMl,
    agitation: scheme.id,
    agitationMarks: marks,
    dark: false,
    actions,
    cautions: bathCautions(step.bath),
  };
}
