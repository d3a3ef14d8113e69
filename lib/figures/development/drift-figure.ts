import {
  type DevelopUntil,
  doseUnderCourse,
  type RateModel,
  type TemperatureCourse,
} from "../../development/index.ts";
import { InputError, requireObject } from "../../input/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";
import { dosePanel, early, printed, temperaturePanel } from "./drift-panels.ts";

const STEPS = 80;

/**
 * A developer that drifts: its temperature above, the development it has given below, as minutes at
 * the target's temperature, with the moment at which to pour out and what the clock alone would say.
 *
 * @param input.model @param input.course @param input.plan what went into developUntil, and its result
 * @param input.title default "A developer that drifts, and when to pour it out"
 * @returns Vega-Lite figure; its text alternative gives the time, the temperatures and the errors
 * @throws InputError if the plan does not belong to the course
 *
 * @example
 * const model = activationEnergyModel({ activationEnergyKJPerMol: 60 })
 * const course = newtonCooling({ startTemperatureC: 24, surroundingsC: 16, ratePerMin: 0.03 })
 * const plan = developUntil({ model, course, targetMin: 11 })
 * driftFigure({ model, course, plan }).description.includes("pour out after 8.5 min") // => true
 */
export function driftFigure(input: {
  readonly model: RateModel;
  readonly course: TemperatureCourse;
  readonly plan: DevelopUntil;
  readonly title?: string;
}): VegaLiteFigure {
  requireObject("driftFigure", "input", input, "an object with model, course and plan");
  const { model, course, plan } = input;
  if (Math.abs(course.startTemperatureC - plan.dose.startTemperatureC) > 1e-9) {
    const advice = "write the plan that developUntil made from this course";
    throw new InputError("driftFigure", "plan", plan.dose.startTemperatureC, advice);
  }
  const end = 1.12 * Math.max(plan.timeMin, plan.targetMin, plan.timeForStartTemperatureMin);
  const perTarget = model.relativeRate(plan.targetTemperatureC);
  const times = Array.from({ length: STEPS + 1 }, (_, i) => (end * i) / STEPS);
  const values = times.map((t) => ({
    t,
    temperature: course.temperatureAt(t),
    dose: t === 0 ? 0 : doseUnderCourse({ model, course, durationMin: t }).doseMin / perTarget,
  }));
  const x = {
    field: "t",
    type: "quantitative",
    title: "Time since pouring in (min)",
    scale: { domain: [0, end], nice: false },
  };
  const key = [
    { label: "pour out", line: { colour: palette.control, dash: [], width: 2 }, upright: true },
    { label: "time for the start temperature", line: { ...early }, upright: true },
    { label: "time as printed", line: { ...printed }, upright: true },
    ...("readings" in course
      ? [{ label: "reading", marker: { shape: "circle", color: palette.series[0], filled: true } }]
      : []),
  ];
  return vegaLiteFigure({
    title: input.title ?? "A developer that drifts, and when to pour it out",
    description: describe(course, plan),
    specification: {
      vconcat: [
        keyView(key, figureWidth.plot),
        temperaturePanel(values, course, plan, { ...x, title: null, axis: { labels: false } }),
        dosePanel(values, plan, x),
      ],
      spacing: 10,
    },
  });
}

function describe(course: TemperatureCourse, plan: DevelopUntil): string {
  const percent = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(1)} %`;
  const { dose } = plan;
  return [
    `Temperature: ${course.description}.`,
    `For ${plan.targetMin.toFixed(1)} min at ${plan.targetTemperatureC.toFixed(1)} °C pour out after ${plan.timeMin.toFixed(1)} min, at ${dose.endTemperatureC.toFixed(1)} °C;`,
    `the bath acts like a constant ${dose.effectiveTemperatureC.toFixed(1)} °C.`,
    `The printed time would miss the dose by ${percent(plan.errorIfUncorrectedPercent)},`,
    `a time corrected for the start temperature alone by ${percent(plan.errorIfStartTemperatureOnlyPercent)}.`,
  ].join(" ");
}
