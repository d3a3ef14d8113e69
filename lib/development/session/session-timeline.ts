import { type ClockTime, clockAfter, shownElapsed } from "./clock-time.ts";
import type { SessionDrying, SessionStep } from "./session-result.ts";
import type { StepDraft } from "./step-draft.ts";

/** Puts steps one after another, each beginning when the one before it ends. */
export function placeSteps(
  drafts: readonly { readonly batch: number; readonly steps: readonly StepDraft[] }[],
  start: ClockTime,
  dryS: number,
): {
  readonly steps: readonly SessionStep[];
  readonly drying: readonly SessionDrying[];
  readonly lengthS: number;
} {
  let now = 0;
  const steps: SessionStep[] = [];
  const drying: SessionDrying[] = [];
  for (const { batch, steps: ofBatch } of drafts) {
    for (const draft of ofBatch) {
      steps.push(placed(draft, batch, now, start));
      now += draft.lengthS;
    }
    const ready = clockAfter(start, now + dryS);
    drying.push({
      batch,
      startClock: clockAfter(start, now).clock,
      readyClock: ready.clock,
      readyDayOffset: ready.dayOffset,
    });
  }
  return { steps, drying, lengthS: now };
}

function placed(draft: StepDraft, batch: number, startS: number, start: ClockTime): SessionStep {
  const moment = clockAfter(start, startS);
  const { actions, ...rest } = draft;
  return {
    ...rest,
    batch,
    startS,
    endS: startS + draft.lengthS,
    startClock: moment.clock,
    startDayOffset: moment.dayOffset,
    startDateTime: moment.dateTime,
    startElapsed: shownElapsed(startS),
    actions: actions.map(({ afterS, timerS = null, text }) => {
      const atS = startS + afterS;
      const { clock, dayOffset } = clockAfter(start, atS);
      return { atS, clock, dayOffset, batch, timerS, text };
    }),
  };
}
