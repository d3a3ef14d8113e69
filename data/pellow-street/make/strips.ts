import type { Densities, Strip } from "../../../lib/control/strip.ts";
import { type RandomStream, seededRandom } from "../../../lib/numerics/index.ts";
import { madeBatches } from "./batches.ts";
import { contaminated, type Effect, effects, lightStruck, readWet } from "./effects.ts";
import { type Line, lab } from "./lab.ts";
import { STREAMS } from "./plan.ts";
import type { PlannedStrip } from "./strip-plan.ts";

/** What the bath was like on the morning of a day. */
export interface BathState {
  /** The replenisher error that has come to show. */
  readonly replenisherError: number;
  readonly offsetC: number;
}

const COLOURS = ["red", "green", "blue"] as const;
/** Of a strip as a whole, of a layer, of one reading; then how a bath wanders from day to day. */
const STRIP_SD = 0.006;
const LAYER_SD = 0.004;
const READING_SD = 0.006;
const WANDER_SD = 0.0025;
const WANDER_KEPT = 0.5;
/** How much of the noise a patch shows: little where there is little dye. */
const PATCH_SHARE: Readonly<Record<string, number>> = { dMin: 0.4, ld: 1, hd: 1.3 };
const PAPER_WHITE_SHARE = 0.3;

/** Runs and reads the planned strips. */
export function makeStrips(
  line: Line,
  planned: readonly PlannedStrip[],
  stateOn: (day: string) => BathState,
): readonly Strip[] {
  const random = seededRandom(STREAMS.strips[line]);
  const process = line === "film" ? "colour-negative" : "colour-paper";
  let wander = 0;
  let lastDay = "";
  return planned.map((strip) => {
    if (strip.day !== lastDay) {
      wander = WANDER_KEPT * wander + WANDER_SD * random.normal();
      lastDay = strip.day;
    }
    const operator = lab.operators[random.integer(0, lab.operators.length - 1)] ?? "MB";
    const patches = readStrip(line, strip, stateOn(strip.day), wander, random);
    const stripBatch = madeBatches[line][strip.batch].registered.id;
    return { takenAt: `${strip.day}T${strip.time}`, process, stripBatch, operator, patches };
  });
}

function readStrip(
  line: Line,
  strip: PlannedStrip,
  state: BathState,
  wander: number,
  { normal }: RandomStream,
): Readonly<Record<string, Densities>> {
  const { registered, hiddenShift } = madeBatches[line][strip.batch];
  const { perReplenisherError, perDegreeC } = effects[line];
  const special = specialEffect(line, strip);
  const whole = STRIP_SD * normal() + wander;
  const layers = COLOURS.map(() => LAYER_SD * normal());
  const patches: Record<string, Densities> = {};
  for (const [patch, reference] of Object.entries(registered.reference)) {
    const share = shareOf(line, patch);
    const read = COLOURS.map((colour, at) => {
      const part = (effect: Effect) => effect[patch]?.[at] ?? 0;
      const noise = share * (whole + (layers[at] ?? 0)) + readingSd(patch) * normal();
      const density =
        reference[colour] +
        (registered.correction[patch]?.[colour] ?? 0) +
        part(hiddenShift) +
        part(perReplenisherError) * state.replenisherError +
        part(perDegreeC) * state.offsetC +
        part(special) +
        noise;
      return Math.round(density * 1000) / 1000;
    });
    const [red = 0, green = 0, blue = 0] = read;
    patches[patch] = { red, green, blue };
  }
  return patches;
}

function specialEffect(line: Line, { special }: PlannedStrip): Effect {
  if (special === undefined) return {};
  if (special === "contaminated") return contaminated;
  return line === "film" ? lightStruck : readWet;
}

function shareOf(line: Line, patch: string): number {
  if (line === "paper" && patch === "dMin") return PAPER_WHITE_SHARE;
  return PATCH_SHARE[patch] ?? 1.2;
}

function readingSd(patch: string): number {
  return patch === "dMin" ? READING_SD / 2 : READING_SD;
}
