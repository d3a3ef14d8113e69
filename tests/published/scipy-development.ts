import {
  activationEnergyFromFactor,
  activationEnergyModel,
  compensateTime,
  contrastFromTwoTimes,
  coolingInWaterBath,
  developUntil,
  doseForProfile,
  doseUnderCourse,
  exponentialApproach,
  factorPerTenDegreesModel,
  fitContrastTime,
  newtonCooling,
  temperatureTolerance,
  timeForContrast,
} from "wetside/development";
import type { Computed } from "./run.ts";

type Case = readonly [number, number, number, number];
type Pair = readonly [number, number];

const course = (startTemperatureC: number, surroundingsC: number, ratePerMin: number) =>
  newtonCooling({ startTemperatureC, surroundingsC, ratePerMin });
const factorModel = (factorPerTenDegrees: number) =>
  factorPerTenDegreesModel({ factorPerTenDegrees });
const energyModel = (activationEnergyKJPerMol: number, referenceTemperatureC = 20) =>
  activationEnergyModel({ activationEnergyKJPerMol, referenceTemperatureC });
const readings = (profile: readonly Pair[]) =>
  profile.map(([timeMin, temperatureC]) => ({ timeMin, temperatureC }));
const reading = ([timeMin, contrastIndex]: Pair) => ({ timeMin, contrastIndex });

export const computed: Computed = {
  "energy-of-factor": (i: { readonly factors: readonly number[] }) =>
    i.factors.map((factorPerTenDegrees) => activationEnergyFromFactor({ factorPerTenDegrees })),
  "time-at-temperature": (i: {
    readonly timeMin: number;
    readonly energy: number;
    readonly temperatures: readonly number[];
  }) =>
    i.temperatures.map(
      (toTemperatureC) =>
        compensateTime({
          timeMin: i.timeMin,
          fromTemperatureC: 20,
          toTemperatureC,
          model: energyModel(i.energy),
        }).timeMin,
    ),
  "newton-cooling": (i: {
    readonly start: number;
    readonly around: number;
    readonly rate: number;
    readonly times: readonly number[];
  }) => i.times.map(course(i.start, i.around, i.rate).temperatureAt),
  "factor-dose": (i: { readonly factor: number; readonly cases: readonly Case[] }) =>
    i.cases.map(
      ([start, around, rate, durationMin]) =>
        doseUnderCourse({
          model: factorModel(i.factor),
          course: course(start, around, rate),
          durationMin,
        }).doseMin,
    ),
  "arrhenius-dose": (i: { readonly energy: number; readonly cases: readonly Case[] }) =>
    i.cases.map(
      ([start, around, rate, durationMin]) =>
        doseUnderCourse({
          model: energyModel(i.energy),
          course: course(start, around, rate),
          durationMin,
        }).doseMin,
    ),
  "profile-dose": (i: {
    readonly factor: number;
    readonly energy: number;
    readonly profile: readonly Pair[];
  }) =>
    [factorModel(i.factor), energyModel(i.energy)].map(
      (model) => doseForProfile({ model, profile: readings(i.profile) }).doseMin,
    ),
  "pour-out": (i: {
    readonly energy: number;
    readonly targetMin: number;
    readonly start: number;
    readonly around: number;
    readonly rate: number;
  }) =>
    developUntil({
      model: energyModel(i.energy),
      targetMin: i.targetMin,
      course: course(i.start, i.around, i.rate),
    }).timeMin,
  "two-bodies": (i: {
    readonly tankMl: number;
    readonly start: number;
    readonly tankRate: number;
    readonly bathMl: number;
    readonly bathStart: number;
    readonly bathRate: number;
    readonly room: number;
    readonly times: readonly number[];
  }) => {
    const bath = coolingInWaterBath({
      tankVolumeMl: i.tankMl,
      startTemperatureC: i.start,
      tankRatePerMin: i.tankRate,
      bathVolumeMl: i.bathMl,
      bathStartTemperatureC: i.bathStart,
      bathRatePerMin: i.bathRate,
      roomC: i.room,
    });
    return i.times.flatMap((t) => [bath.temperatureAt(t), bath.bathTemperatureAt(t)]);
  },
  "two-time-gamma": (i: {
    readonly first: Pair;
    readonly second: Pair;
    readonly wanted: number;
  }) => {
    const made = contrastFromTwoTimes({ first: reading(i.first), second: reading(i.second) });
    const wanted = timeForContrast({ curve: made.curve, contrastIndex: i.wanted });
    return [made.ratePerMin, made.ceiling, wanted.timeMin];
  },
  "contrast-fit": (i: {
    readonly times: readonly number[];
    readonly contrasts: readonly number[];
  }) => {
    const rows = i.times.map((t, j) => reading([t, i.contrasts[j] ?? Number.NaN]));
    const { parameters } = fitContrastTime({ rows });
    return [
      ...parameters.map((each) => each.value),
      ...parameters.map((each) => each.standardError),
    ];
  },
  "contrast-tolerance": (i: {
    readonly energy: number;
    readonly ceiling: number;
    readonly rate: number;
    readonly timeMin: number;
    readonly contrast: number;
  }) => {
    const curve = exponentialApproach({
      ceiling: i.ceiling,
      ratePerMin: i.rate,
      range: { minMin: 2, maxMin: 6 },
    });
    const tolerance = temperatureTolerance({
      model: energyModel(i.energy, 37.8),
      temperatureC: 37.8,
      allowed: { contrast: i.contrast, curve, timeMin: i.timeMin },
    });
    return [tolerance.belowC ?? Number.NaN, tolerance.aboveC ?? Number.NaN];
  },
};
