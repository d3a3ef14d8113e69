export {
  type CoolingFromReadings,
  coolingFromTwoReadings,
  type TemperatureReading,
} from "./cooling-from-two-readings.ts";
export { type CoolingInWaterBath, coolingInWaterBath } from "./cooling-in-water-bath.ts";
export { type CoolingOfTank, type CoolingTank, coolingOfTank } from "./cooling-of-tank.ts";
export { type DevelopUntil, developUntil } from "./develop-until.ts";
export {
  type DevelopmentDose,
  doseForProfile,
  doseUnderCourse,
} from "./dose-under-course.ts";
export { type LoggedTemperatures, loggedTemperatures } from "./logged-temperatures.ts";
export { type NewtonCooling, newtonCooling } from "./newton-cooling.ts";
export { constantTemperature, type TemperatureCourse } from "./temperature-course.ts";
