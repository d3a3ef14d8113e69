import type { DevelopUntil, TemperatureCourse } from "../../development/index.ts";
import type { KeyItem } from "../parts/chart-key.ts";
import type { JsonObject } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

type LineSample = NonNullable<KeyItem["line"]>;

/** How the time for the start temperature is drawn. */
export const early: LineSample = { colour: palette.action, dash: [8, 4], width: 1.6 };
/** How the time as printed is drawn. */
export const printed: LineSample = { colour: palette.quiet, dash: [2, 3], width: 1.6 };

/** Upright rules at the three times. */
function rules(plan: DevelopUntil): JsonObject[] {
  const rule = (t: number, style: LineSample) => ({
    data: { values: [{ t }] },
    mark: {
      type: "rule",
      color: style.colour,
      strokeDash: style.dash,
      strokeWidth: style.width,
    },
  });
  return [
    rule(plan.targetMin, printed),
    rule(plan.timeForStartTemperatureMin, early),
    rule(plan.timeMin, { colour: palette.control, dash: [], width: 2 }),
  ];
}

/** The temperature of the bath, and the constant one that would do the same. */
export function temperaturePanel(
  values: readonly JsonObject[],
  course: TemperatureCourse,
  plan: DevelopUntil,
  x: JsonObject,
): JsonObject {
  const y = {
    field: "temperature",
    type: "quantitative",
    title: "Temperature (°C)",
    scale: { zero: false, nice: true },
  };
  const mean = [{ y: plan.dose.effectiveTemperatureC }];
  const across = { x: { value: 0 }, x2: { value: figureWidth.plot } };
  const readings =
    "readings" in course && Array.isArray(course.readings)
      ? course.readings.map(({ timeMin, temperatureC }) => ({
          t: timeMin,
          temperature: temperatureC,
        }))
      : [];
  const inView = readings.filter(({ t }) => t <= Number(values.at(-1)?.t));
  return {
    width: figureWidth.plot,
    height: 150,
    encoding: { x },
    layer: [
      ...rules(plan),
      {
        data: { values: mean },
        mark: { type: "rule", color: palette.series[2], strokeDash: [5, 3] },
        encoding: { y: { ...y, field: "y" }, ...across },
      },
      {
        data: { values: mean },
        mark: {
          type: "text",
          text: `acts like ${plan.dose.effectiveTemperatureC.toFixed(1)} °C`,
          align: "left",
          dx: 4,
          ...(plan.dose.startTemperatureC > plan.dose.effectiveTemperatureC
            ? { baseline: "top", dy: 4 }
            : { baseline: "bottom", dy: -3 }),
          color: palette.series[2],
        },
        encoding: { y: { ...y, field: "y" }, x: { value: 0 } },
      },
      { data: { values }, mark: { type: "line" }, encoding: { y } },
      ...(inView.length === 0
        ? []
        : [{ data: { values: inView }, mark: { type: "point" }, encoding: { y } }]),
    ],
  };
}

/** The development given, up to the target. */
export function dosePanel(
  values: readonly JsonObject[],
  plan: DevelopUntil,
  x: JsonObject,
): JsonObject {
  const y = {
    field: "dose",
    type: "quantitative",
    title: `Dose (min at ${Number(plan.targetTemperatureC.toFixed(1))} °C)`,
    scale: { zero: true, nice: true },
  };
  const target = [{ y: plan.targetMin }];
  return {
    width: figureWidth.plot,
    height: 190,
    encoding: { x },
    layer: [
      ...rules(plan),
      {
        data: { values: target },
        mark: { type: "rule", color: palette.ink, strokeWidth: 1 },
        encoding: {
          y: { ...y, field: "y" },
          x: { value: 0 },
          x2: { value: figureWidth.plot },
        },
      },
      {
        data: { values: target },
        mark: { type: "text", text: "target", align: "left", baseline: "bottom", dx: 4, dy: -3 },
        encoding: { y: { ...y, field: "y" }, x: { value: 0 } },
      },
      { data: { values }, mark: { type: "line", strokeWidth: 2.2 }, encoding: { y } },
      {
        data: { values: [{ t: plan.timeMin, dose: plan.targetMin }] },
        mark: { type: "point", color: palette.control, size: 80 },
        encoding: { y },
      },
    ],
  };
}
