import type { TimedBatch } from "./batch-steps.ts";
import { courseInTank } from "./plan-development.ts";
import { isWaterBath } from "./process-recipe.ts";
import type { ReadSession } from "./read-session.ts";

/** 5 °F between baths: US Navy, Illustrator Draftsman, NAVEDTRA 14262, p. 7-11. */
const BATH_STEP_C = 5 / 1.8;
/** A room so much colder or warmer than the developer is pointed out; common practice. */
const ROOM_STEP_C = 5;

/** Temperatures that are far from the usual, from one another or from the process's tolerance. */
export function temperatureWarnings(
  timed: readonly TimedBatch[],
  session: ReadSession,
): readonly string[] {
  const { developerC, roomC, waterBathC, fixerC, washC } = session.temperatures;
  const [low = 0, high = 45] = session.recipe.usualRangeC;
  const warnings = [...toleranceWarnings(session)];
  if (!session.colour && (developerC < low || developerC > high)) {
    warnings.push(
      `the developer's ${developerC.toFixed(1)} °C is outside the usual ${low} to ${high} °C: colder development is incomplete, warmer swells the emulsion`,
    );
  }
  for (const [bath, other] of [
    ["fixer", fixerC],
    ["wash", washC],
  ] as const) {
    if (session.colour || Math.abs(other - developerC) <= BATH_STEP_C) continue;
    warnings.push(
      `the ${bath} is ${Math.abs(other - developerC).toFixed(1)} °C ${other < developerC ? "colder" : "warmer"} than the developer: more than ${BATH_STEP_C.toFixed(1)} °C between baths can reticulate the emulsion`,
    );
  }
  if (!session.colour && waterBathC !== null && Math.abs(waterBathC - developerC) > ROOM_STEP_C) {
    warnings.push(
      `the water bath is ${Math.abs(waterBathC - developerC).toFixed(1)} °C ${waterBathC < developerC ? "colder" : "warmer"} than the developer: the times allow for it, a bath at ${developerC.toFixed(1)} °C would be better`,
    );
  }
  const first = timed[0];
  if (first && waterBathC === null && Math.abs(roomC - developerC) > ROOM_STEP_C) {
    const { startTemperatureC } = courseInTank(first.batch, session, developerC);
    const endC = first.development.endTemperatureC;
    const tank = session.preWash
      ? ""
      : `the tank takes it to ${startTemperatureC.toFixed(1)} °C at once and `;
    warnings.push(
      `the room is ${Math.abs(roomC - developerC).toFixed(1)} °C ${roomC < developerC ? "colder" : "warmer"} than the developer: ${tank}it ends at ${endC.toFixed(1)} °C; ${session.colour ? "stand it in a water bath" : "the times allow for it, a water bath would be better"}`,
    );
  }
  return warnings;
}

/** Colour: other baths that were measured and lie outside the process's tolerance. */
function toleranceWarnings({ colour, recipe, request }: ReadSession): readonly string[] {
  const { fixerC, washC } = request.temperatures;
  if (!colour) return [];
  return recipe.steps.flatMap(({ bath, temperatureC, toleranceC }) => {
    const givenC = isWaterBath(bath) ? washC : fixerC;
    const other = bath !== "developer" && bath !== "pre-wash";
    if (!other || givenC === undefined || temperatureC === null || toleranceC === null) return [];
    if (Math.abs(givenC - temperatureC) <= toleranceC) return [];
    return [
      `${bath}: at ${givenC} °C it is outside its tolerance, ${temperatureC} ± ${toleranceC} °C`,
    ];
  });
}
