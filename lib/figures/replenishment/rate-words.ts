import { requireObject } from "../../input/index.ts";
import type { RateTuning } from "../../replenishment/index.ts";
import { chartTime, dayText } from "../parts/chart-time.ts";
import type { RateWitness } from "./rate-agreement-figure.ts";

const DAY_MS = 86_400_000;
const percent = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;
const range = ([low, high]: readonly [number, number]) => `${percent(low)} to ${percent(high)}`;
const dayOf = (time: string) => dayText(chartTime("rateVerdictLine", "time", time));

/**
 * The finding of a tuning in one line, for the terminal.
 *
 * @param tuning from `tuneRate`
 * @param pump its name, as the pump log writes it
 * @returns one line; no error of its own
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 60 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.004 * Math.sin(5 * i)]) };
 * rateVerdictLine(tuneRate({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] }), "film-developer").startsWith("film-developer: no change to speak of") // => true
 */
export function rateVerdictLine(tuning: RateTuning, pump: string): string {
  requireObject("rateVerdictLine", "tuning", tuning, "an object with watch, change, changeAt, …");
  const { change, advice, watch } = tuning;
  if (change.finding !== "rate changed") return `${pump}: ${lowerFirst(change.reason)}`;
  const [early, late] = tuning.changeAtInterval;
  const found = `${pump}: ${percent(change.error)} (${range(change.errorInterval)}) since ${dayOf(tuning.changeAt)} (${dayOf(early)} to ${dayOf(late)})`;
  if (!advice.advise) return `${found}. ${advice.reason}`;
  const now = watch.settingMlPerStroke;
  return `${found}. Mend the pump; until then set ${now} → ${tuning.newSettingMlPerStroke.toFixed(2)} mL a stroke${advice.capped ? " (largest step), then look again" : ""}.`;
}

/**
 * The advice as a sheet of plain text to pin up at the machine.
 *
 * @param tuning from `tuneRate`
 * @param options.lab and options.pump names; options.witnesses what others say about the same rate;
 *   options.otherPumps sentences about them
 * @returns lines of text, 78 characters wide at most
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 60 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.004 * Math.sin(5 * i)]) };
 * rateAdviceSheet(tuneRate({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] }), { lab: "Shed", pump: "film-developer" }).split("\n")[0] // => "Shed: replenisher pump film-developer, as of 29 Apr 2026"
 */
export function rateAdviceSheet(
  tuning: RateTuning,
  options: {
    readonly lab: string;
    readonly pump: string;
    readonly witnesses?: readonly RateWitness[];
    readonly otherPumps?: readonly string[];
  },
): string {
  requireObject("rateAdviceSheet", "tuning", tuning, "an object with watch, change, changeAt, …");
  requireObject("rateAdviceSheet", "options", options, "an object with lab and pump");
  const { advice, watch } = tuning;
  const last = chartTime("rateAdviceSheet", "at", watch.at.at(-1) ?? "");
  const witnesses = (options.witnesses ?? []).map(
    ({ name, error, interval }) => `${name}: ${percent(error)} (${range(interval)})`,
  );
  const part = (heading: string, texts: readonly string[]) =>
    texts.length === 0 ? [] : ["", heading, ...texts.flatMap((text) => wrapped(text))];
  return [
    `${options.lab}: replenisher pump ${options.pump}, as of ${dayText(last)}`,
    ...part("FOUND", [rateVerdictLine(tuning, options.pump)]),
    ...part("WHAT ELSE SAYS SO", witnesses),
    ...part("OTHER PUMPS", options.otherPumps ?? []),
    ...(advice.advise ? adviceParts(tuning, last, part) : part("DO", [advice.reason])),
    ...part("CAUTIONS", [
      "Gloves and goggles at the replenisher and its lines; fresh air. Switch the machine off and lock it before a pump is opened.",
      "Safety data sheets and the process manual come first. What overflows goes where local codes and licensed practice send it.",
    ]),
    "",
  ].join("\n");
}

function adviceParts(
  { watch, advice, newSettingMlPerStroke }: RateTuning,
  last: number,
  part: (heading: string, texts: readonly string[]) => string[],
): string[] {
  const now = watch.settingMlPerStroke;
  const after = newSettingMlPerStroke.toFixed(2);
  const again = advice.lookAgainDays;
  // A setting that was raised to make up for the pump goes back to what it was before.
  const f = watch.setFractionNow;
  const before = `${watch.firstRateMlPerM2.toFixed(0)} mL/m², as at the beginning of the log (${(now / (1 + f)).toFixed(2)} mL a stroke)`;
  const back = f === 0 ? `${now} mL a stroke` : before;
  const rest = advice.capped
    ? [
        `It is the largest step allowed; ${advice.newRateInterval.map((each) => each.toFixed(0)).join(" to ")} mL/m² would make up for all of it. Take the rest when you look again.`,
      ]
    : [];
  return [
    ...part("FIRST", [
      "Mend the pump: valves, hose, diaphragm, air in the line; then three checks with the measuring cylinder.",
    ]),
    ...part("UNTIL IT IS MENDED", [
      `Set ${now} → ${after} mL a stroke (${advice.rateMlPerM2.toFixed(0)} → ${advice.newRateMlPerM2.toFixed(0)} mL/m²).`,
      ...rest,
      `On the day the pump is mended set it back to ${back}.`,
    ]),
    ...part("LOOK AGAIN", [
      again === undefined
        ? "One tank turnover on (the line stood idle, so its day is not known), or with the first strip beyond a control limit."
        : `${dayText(last + Math.ceil(again) * DAY_MS)}, one tank turnover on (${again.toFixed(0)} days at this load), or with the first strip beyond a control limit.`,
    ]),
    ...part("IF NOTHING IS DONE", [advice.ifNothingIsDone]),
  ];
}

function wrapped(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + word.length < 77) {
      lines[lines.length - 1] = `${line} ${word}`;
    } else lines.push(`${lines.length === 0 ? "-" : " "} ${word}`);
  }
  return lines;
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
