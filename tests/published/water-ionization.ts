import { daviesActivityCoefficient, waterPkw } from "wetside/solutions";

export const computed = {
  pkw: () => [0, 10, 20, 25, 30, 40, 50, 60].map(waterPkw),
  davies: () => [0.001, 0.01, 0.1].map((strength) => daviesActivityCoefficient(1, strength)),
};
