import { formatMinutes } from "../../units/index.ts";
import type { TimedBatch } from "./batch-steps.ts";
import { developerName, isWaterBath } from "./process-recipe.ts";
import type { ReadSession } from "./read-session.ts";
import { waterChanges } from "./water-draft.ts";

/** What to have ready before a batch: developer, other baths, temperature, fixer test. */
export function preparation(timed: TimedBatch, session: ReadSession): readonly string[] {
  return [
    measure(timed, session),
    setOut(timed, session),
    ...warmWater(timed, session),
    temper(timed, session),
    ...test(timed),
  ];
}

/** What to do in the dark, and the last look at the thermometer. */
export function loading(timed: TimedBatch, session: ReadSession): readonly string[] {
  const { batch, development } = timed;
  const names = batch.films.map((each) => each.film.name).join(", ");
  const { bottleTemperatureC, timePerHalfDegreeS: change } = development;
  const reading = bottleReading(bottleTemperatureC, session);
  const otherwise =
    change === null
      ? ""
      : `; for each half degree ${Math.abs(change)} s ${change < 0 ? "shorter if warmer, longer if colder" : "longer if warmer, shorter if colder"}`;
  return [
    session.tank.open
      ? `lights out: take ${names} from the holders, into a dry pile, emulsion up`
      : `in darkness: load ${names}, close the tank`,
    `then take the developer's temperature again: the plan holds for ${reading}${otherwise}`,
  ];
}

function measure({ batch, development }: TimedBatch, session: ReadSession): string {
  const developer = batch.films[0]?.developer;
  const at = bottleReading(development.bottleTemperatureC, session);
  if (!developer || developer.given.use === "re-used") {
    return `measure ${batch.volumeMl} mL ${developer?.given.name ?? developerName(session.recipe)}, ${at}`;
  }
  const { parts, ratio, given } = developer;
  const amount = (share: number) => Math.round(batch.volumeMl * share * 10) / 10;
  const [only] = parts;
  if (developer.stockShare >= 1 && parts.length === 1) {
    return `measure ${batch.volumeMl} mL ${given.name}, ${at}`;
  }
  const concentrates = parts.map(({ label, share }) => `${amount(share)} mL ${label}`);
  const water = amount(1 - developer.stockShare);
  const stirred = parts.length > 1 ? `, stirring between: ${given.name}` : "";
  const into = water > 0 ? `measure ${water} mL water, then into it ` : "measure ";
  const whole = only === undefined ? "" : ` (${ratio.text}, ${batch.volumeMl} mL)`;
  return `${into}${concentrates.join(", then ")}${stirred}${whole}, ${at}`;
}

function setOut({ batch }: TimedBatch, session: ReadSession): string {
  const { recipe, request, tank } = session;
  const baths = recipe.steps
    .map((step) => step.bath)
    .filter((bath) => bath !== "developer" && !isWaterBath(bath))
    .filter((bath) => bath !== "wash aid" || request.wash?.aid)
    .map((bath) => (bath === "stop" && request.stop === "water" ? "water for the stop" : bath));
  if (!tank.open) return `set out in order, ${batch.volumeMl} mL each: ${baths.join(", ")}`;
  const water = session.preWash ? ["water for the pre-wash"] : [];
  const trays = [...water, "developer", ...baths].join(", ");
  return `pour into trays from left to right, ${batch.volumeMl} mL each: ${trays}`;
}

/** Water of the recipe's own temperature that has to stand ready: the tap has another. */
function warmWater({ batch }: TimedBatch, session: ReadSession): readonly string[] {
  const { recipe, tank, request, preWash } = session;
  const steps = recipe.steps.filter(
    ({ bath, temperatureC }) =>
      isWaterBath(bath) && temperatureC !== null && (preWash || bath !== "pre-wash"),
  );
  if (tank.open || request.wash?.by === "flow" || steps.length === 0) return [];
  const fills = steps.reduce((sum, step) => sum + waterChanges(step, session), 0);
  const litres = ((fills * batch.volumeMl) / 1000).toFixed(1);
  const warm = request.temperatures.washC ?? steps[0]?.temperatureC;
  return [`have ${litres} L of water at ${warm} °C ready: ${fills} fills`];
}

function temper({ development }: TimedBatch, { temperatures }: ReadSession): string {
  const bath = temperatures.waterBathC;
  return bath === null
    ? `bring all baths to temperature; the developer will work for ${formatMinutes(development.timeS / 60)}`
    : `bring all baths to temperature in the water bath at ${bath} °C`;
}

function test({ fixing }: TimedBatch): readonly string[] {
  if (fixing === null) return [];
  const seconds = Math.round(fixing.clearingTimeS);
  return [
    `clear a scrap of the same film in the fixer: the plan reckons with ${seconds} s; if it takes longer, fix ${fixing.multiple} times as long as it took`,
  ];
}

/** True temperature, with what the user's thermometer shows if that differs. */
function bottleReading(temperatureC: number, { request }: ReadSession): string {
  const error = request.temperatures.thermometerErrorC ?? 0;
  const read = error === 0 ? "" : ` (the thermometer shows ${(temperatureC + error).toFixed(1)})`;
  return `${temperatureC.toFixed(1)} °C${read}`;
}
