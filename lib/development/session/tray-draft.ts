import { InputError } from "../../input/index.ts";
import { formatMinutes } from "../../units/index.ts";
import type { RecipeStep } from "./process-recipe.ts";
import type { ReadSession } from "./read-session.ts";
import { bathCautions } from "./session-cautions.ts";
import type { ActionDraft, BathTimes, StepDraft } from "./step-draft.ts";

/**
 * A bath in an open tray. Sheets go in one by one and come out in the same order, so that each has
 * the same time; the step runs from the first sheet in to the first sheet out. No sheet leaves
 * before the last one is in: a short bath is lengthened to that.
 */
export function trayDraft(step: RecipeStep, session: ReadSession, bath: BathTimes): StepDraft {
  const { pourOutS: drainS, sheetEveryS } = session.handling;
  const { films } = bath;
  const leastS = films * sheetEveryS + drainS;
  if (step.bath === "developer" && bath.timeS < leastS) {
    const advice = `write fewer sheets at a time, a quicker hand (handling.sheetEveryS) or a longer development: ${films} sheets at ${sheetEveryS} s each take ${leastS} s to go in, the developer works for ${bath.timeS} s`;
    throw new InputError("planSession", "films", `${films} sheets`, advice);
  }
  const timeS = Math.max(bath.timeS, leastS);
  const outAtS = Math.max(0, timeS - drainS);
  const at = bath.temperatureC === null ? "" : `, ${bath.temperatureC.toFixed(1)} °C`;
  const one = films === 1;
  const entering = one ? "slide the sheet in" : `slide the sheets in, one every ${sheetEveryS} s`;
  const moving = one
    ? "rock the tray, each side in turn"
    : `from then on bottom sheet to the top, one every ${sheetEveryS} s`;
  const after = bath.after === "away" ? "" : ` (${bath.after} in the end)`;
  const leaving = one
    ? `lift the sheet out of ${step.bath}, drain it${after}`
    : `lift the first sheet out of ${step.bath}, drain it, on into the next bath; the others follow in order, one every ${sheetEveryS} s${after}`;
  const actions: ActionDraft[] = [
    { afterS: 0, text: `${step.bath} (${bath.volumeMl} mL${at}): ${entering}` },
    {
      afterS: 0,
      timerS: 0,
      text: `start the timer with the first: ${formatMinutes(timeS / 60)}; ${moving}`,
    },
    { afterS: outAtS, timerS: outAtS, text: leaving },
  ];
  if (bath.lightsAfterS !== undefined && bath.lightsAfterS !== null) {
    const lightS = (films - 1) * sheetEveryS + bath.lightsAfterS;
    if (lightS < outAtS) {
      const text = "white light may go on from here, if no other film lies open";
      actions.splice(2, 0, { afterS: lightS, timerS: lightS, text });
    } else {
      const text = `when the last sheet is out of ${step.bath}, white light may go on`;
      actions.push({ afterS: outAtS, timerS: outAtS, text });
    }
  }
  return {
    bath: step.bath,
    lengthS: timeS,
    temperatureC: bath.temperatureC,
    toleranceC: step.toleranceC,
    volumeMl: bath.volumeMl,
    agitation: one ? "rock the tray" : "bottom sheet to the top",
    agitationMarks: outAtS > 0 ? [{ fromS: 0, toS: outAtS }] : [],
    dark: bath.dark ?? false,
    actions,
    cautions: bathCautions(step.bath),
  };
}
