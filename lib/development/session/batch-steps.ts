import type { FixingTime } from "./fixing-time.ts";
import type { PlannedBatch } from "./plan-batches.ts";
import type { PlannedWash } from "./plan-wash.ts";
import { loading, preparation } from "./preparation.ts";
import { developerName, isWaterBath, type RecipeStep } from "./process-recipe.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionDevelopment } from "./session-result.ts";
import { type BathTimes, bathDraft, handlingDraft, type StepDraft } from "./step-draft.ts";
import { trayDraft } from "./tray-draft.ts";
import { washDraft } from "./wash-draft.ts";
import { waterChanges, waterDraft } from "./water-draft.ts";

/** A batch with its times worked out. */
export interface TimedBatch {
  readonly batch: PlannedBatch;
  readonly development: SessionDevelopment;
  /** Black-and-white only; a colour process's own minutes hold otherwise. */
  readonly fixing: FixingTime | null;
  readonly wash: PlannedWash | null;
}

/** A stop of plain water takes longer than an acid one; common practice, no source. */
const WATER_STOP_S = 60;

/** The steps of one batch, from mixing or turning round to hanging the films. */
export function batchSteps(
  timed: TimedBatch,
  session: ReadSession,
  first: boolean,
): readonly StepDraft[] {
  const { films } = timed.batch;
  const { handling, recipe, tank } = session;
  const names = films.map((each) => each.film.name).join(", ");
  const sheets = films.filter((each) => each.sheet).length;
  const loadS = (films.length - sheets) * handling.loadSPerFilm + sheets * handling.loadSPerSheet;
  const dry = tank.open
    ? "dry hands and holders, fresh water into the trays of water"
    : sheets > 0
      ? "rinse tank and holder, DRY the holder: sheets stick to a wet one"
      : "rinse tank and spirals, DRY the spirals: film jams on wet ones";
  const ready = preparation(timed, session);
  const hang = sheets > 0 ? "by a corner" : "weight the ends";
  const drafts = [
    first
      ? handlingDraft("mix", handling.mixS, ready)
      : handlingDraft("turn round", handling.turnRoundS, [dry, ...ready]),
    handlingDraft("load", loadS, loading(timed, session), true),
    ...recipe.steps.flatMap((step) => recipeDraft(step, timed, session)),
    handlingDraft("hang", films.length * handling.hangSPerFilm, [
      `hang ${names} free of dust, ${hang}`,
    ]),
  ];
  return drafts.filter((draft) => draft.lengthS > 0);
}

function recipeDraft(step: RecipeStep, timed: TimedBatch, session: ReadSession): StepDraft[] {
  const { batch, development, fixing, wash } = timed;
  const { recipe, request, temperatures } = session;
  const { volumeMl } = batch;
  const { bath } = step;
  if (bath === "pre-wash" && !session.preWash) return [];
  if ((bath === "rinse" || bath === "wash aid") && !request.wash?.aid) return [];
  if (bath === "wash" && wash !== null) return [washDraft(wash, session, volumeMl)];
  const lights = recipe.steps.findIndex((each) => each.bath === recipe.lightsOn.bath);
  const times = {
    volumeMl,
    films: batch.films.length,
    lightsAfterS: recipe.lightsOn.bath === bath ? recipe.lightsOn.afterS : null,
    dark: recipe.steps.indexOf(step) <= lights,
    after: isWaterBath(bath) ? "away" : keeps(bath, timed, session),
  };
  const draft = (named: RecipeStep, more: Pick<BathTimes, "timeS" | "temperatureC" | "called">) => {
    const all = { ...times, ...more };
    if (session.tank.open) return trayDraft(named, session, all);
    const changes = waterChanges(named, session);
    return changes === 1
      ? bathDraft(named, session, all)
      : waterDraft(named, session, all, changes);
  };
  const fixerC = temperatures.fixerC;
  if (bath === "developer") {
    const { timeS, bottleTemperatureC: temperatureC } = development;
    return [draft(step, { timeS, temperatureC, called: developerName(recipe) })];
  }
  if (bath === "stop" && request.stop === "water") {
    times.after = "away";
    return [draft({ ...step, bath: "water stop" }, { timeS: WATER_STOP_S, temperatureC: fixerC })];
  }
  const timeS = Math.round(bath === "fixer" && fixing ? fixing.fixS : (step.minutes ?? 0) * 60);
  if (bath === "pre-wash") {
    return [draft(step, { timeS, temperatureC: development.bottleTemperatureC })];
  }
  if (bath !== "wetting agent" && bath !== "final rinse") {
    const named = isWaterBath(bath) ? request.temperatures.washC : request.temperatures.fixerC;
    const givenC = session.colour ? named : undefined;
    return [draft(step, { timeS, temperatureC: givenC ?? step.temperatureC ?? fixerC })];
  }
  const last = draft(step, { timeS, temperatureC: null });
  if (request.rinseWater !== "hard") return [last];
  const text = "have it mixed with distilled or filtered water: hard water dries to marks";
  return [{ ...last, actions: [{ afterS: 0, text }, ...last.actions] }];
}

function keeps(bath: string, { batch }: TimedBatch, session: ReadSession): string {
  const developer = batch.films[0]?.developer?.given;
  const oneShot =
    bath === "developer" && developer
      ? developer.use === "one-shot"
      : session.bottles.find((each) => each.bath === bath)?.oneShot;
  if (bath === "wetting agent" && oneShot === undefined) return "away";
  return oneShot ? "used up, away by the local code" : "back into its bottle";
}
