import type { PlannedWash } from "./plan-wash.ts";
import type { ReadSession } from "./read-session.ts";
import type { ActionDraft, StepDraft } from "./step-draft.ts";

/** The wash as a step: each change filled and emptied, or one flow. */
export function washDraft(wash: PlannedWash, session: ReadSession, volumeMl: number): StepDraft {
  const { pourInS, pourOutS } = session.handling;
  const standS = Math.round(wash.minutesEach * 60);
  const vessel = session.tank.open ? "tray" : "tank";
  const move = session.tank.open ? "move the sheets" : "invert";
  const actions: ActionDraft[] = [];
  let lengthS = standS;
  if (wash.by === "flow") {
    actions.push({
      afterS: 0,
      text: `run water through the ${vessel} for ${wash.minutesEach} min, at least ${Math.ceil(wash.flowMlPerMin ?? 0)} mL a minute, the films covered`,
    });
  } else {
    lengthS = wash.changes * (pourInS + standS);
    for (let change = 1; change <= wash.changes; change++) {
      const startS = (change - 1) * (pourInS + standS);
      const of = `change ${change} of ${wash.changes}`;
      actions.push({
        afterS: startS,
        text: `fill with ${volumeMl} mL clean water, ${move}: ${of}`,
      });
      const timerS = Math.max(0, standS - pourOutS);
      actions.push({ afterS: startS + pourInS + timerS, timerS, text: "pour out wash water" });
    }
  }
  return {
    bath: "wash",
    lengthS,
    temperatureC: session.temperatures.washC,
    toleranceC: null,
    volumeMl: wash.by === "flow" ? null : volumeMl,
    agitation: wash.by === "flow" ? "running water" : `${wash.changes} changes`,
    agitationMarks: [],
    dark: false,
    actions,
    cautions: [],
  };
}
