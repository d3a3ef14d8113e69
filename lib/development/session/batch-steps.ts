import { formatMinutes } from "../../units/index.ts";
import type { FixingTime } from "./fixing-time.ts";
import type { PlannedBatch } from "./plan-batches.ts";
import type { PlannedWash } from "./plan-wash.ts";
import type { RecipeStep } from "./process-recipe.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionDevelopment } from "./session-result.ts";
import { bathDraft, handlingDraft, type StepDraft } from "./step-draft.ts";
import { washDraft } from "./wash-draft.ts";

/** A batch with its times worked out. */
export interface TimedBatch {
  readonly batch: PlannedBatch;
  readonly development: SessionDevelopment;
  /** Black-and-white only; a colour process's own minutes hold otherwise. */
  readonly fixing: FixingTime | null;
  readonly wash: PlannedWash | null;
}

const RINSES = ["pre-wash", "first wash", "rinse"];

/** The steps of one batch, from mixing or turning round to hanging the films. */
export function batchSteps(
  timed: TimedBatch,
  session: ReadSession,
  first: boolean,
): readonly StepDraft[] {
  const { batch } = timed;
  const { handling, recipe } = session;
  const films = batch.films.length;
  const names = batch.films.map((each) => each.film.name).join(", ");
  const drafts = [
    first
      ? handlingDraft("mix", handling.mixS, [
          measure(timed, session),
          temper(timed, session),
          ...test(session),
        ])
      : handlingDraft("turn round", handling.turnRoundS, [
          "rinse tank and spirals, DRY the spirals: film jams on wet ones",
          measure(timed, session),
          temper(timed, session),
          ...test(session),
        ]),
    handlingDraft(
      "load",
      films * handling.loadSPerFilm,
      [
        `in darkness: load ${names}, close the tank`,
        `then take the developer's temperature again: the plan holds for ${bottleReading(timed.development.bottleTemperatureC, session)}`,
      ],
      true,
    ),
  ];
  for (const step of recipe.steps) drafts.push(...recipeDraft(step, timed, session));
  drafts.push(
    handlingDraft("hang", films * handling.hangSPerFilm, [
      `hang ${names} free of dust, weight the ends`,
    ]),
  );
  return drafts.filter((draft) => draft.lengthS > 0);
}

function recipeDraft(step: RecipeStep, timed: TimedBatch, session: ReadSession): StepDraft[] {
  const { batch, development, fixing, wash } = timed;
  const { temperatures, recipe, request } = session;
  const { volumeMl } = batch;
  if (step.bath === "pre-wash" && !session.preWash) return [];
  if ((step.bath === "rinse" || step.bath === "wash aid") && !request.wash?.aid) return [];
  if (step.bath === "wash" && wash !== null) return [washDraft(wash, session, volumeMl)];
  const lightsAfterS = recipe.lightsOn.bath === step.bath ? recipe.lightsOn.afterS : null;
  const minutes = step.minutes ?? 0;
  if (step.bath === "developer") {
    const temperatureC = development.bottleTemperatureC;
    const after = keeps(step.bath, timed, session);
    return [bathDraft(step, session, { timeS: development.timeS, volumeMl, temperatureC, after })];
  }
  if (step.bath === "stop" && request.stop === "water") {
    const after = "away";
    const water = { ...step, bath: "water stop" };
    const temperatureC = temperatures.fixerC;
    return [bathDraft(water, session, { timeS: 60, volumeMl, temperatureC, after })];
  }
  const timeS = Math.round(step.bath === "fixer" && fixing ? fixing.fixS : minutes * 60);
  const last = step.bath === "wetting agent" || step.bath === "final rinse";
  const water = RINSES.includes(step.bath) || step.bath === "wash";
  const temperatureC = last
    ? null
    : step.bath === "pre-wash"
      ? development.bottleTemperatureC
      : (step.temperatureC ?? temperatures.fixerC);
  const after = water ? "away" : keeps(step.bath, timed, session);
  const draft = bathDraft(step, session, { timeS, volumeMl, temperatureC, after, lightsAfterS });
  if (last && request.rinseWater === "hard") {
    const text = "have it mixed with distilled or filtered water: hard water dries to marks";
    return [{ ...draft, actions: [{ afterS: 0, text }, ...draft.actions] }];
  }
  return [draft];
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

function measure({ batch, development }: TimedBatch, session: ReadSession): string {
  const developer = batch.films[0]?.developer;
  const at = bottleReading(development.bottleTemperatureC, session);
  if (!developer || developer.given.use === "re-used") {
    return `measure ${batch.volumeMl} mL ${developer?.given.name ?? "developer"}, ${at}`;
  }
  const stock = Math.round(batch.stockMl * 10) / 10;
  const water = Math.round((batch.volumeMl - batch.stockMl) * 10) / 10;
  return `measure ${stock} mL ${developer.given.name} and ${water} mL water (${developer.ratio.text}), ${at}`;
}

function temper({ development }: TimedBatch, { temperatures }: ReadSession): string {
  const bath = temperatures.waterBathC;
  return bath === null
    ? `bring all baths to temperature; the developer will work for ${formatMinutes(development.timeS / 60)}`
    : `bring all baths to temperature in the water bath at ${bath} °C`;
}

function test({ recipe }: ReadSession): readonly string[] {
  return recipe.pushTimesMin === null
    ? ["clear a scrap of the same film in the fixer and time it"]
    : [];
}

/** True temperature, with what the user's thermometer shows if that differs. */
function bottleReading(temperatureC: number, { request }: ReadSession): string {
  const error = request.temperatures.thermometerErrorC ?? 0;
  const read = error === 0 ? "" : ` (the thermometer shows ${(temperatureC + error).toFixed(1)})`;
  return `${temperatureC.toFixed(1)} °C${read}`;
}
