import { bathFormula, scaleFormula } from "wetside/solutions";

const amounts = (id: string, volumeMl: number) =>
  scaleFormula(bathFormula(id), volumeMl).ingredients.map(({ amount }) => amount);

const GRAIN_G = 0.06479891;
const OUNCE_G = 28.349523125;
const IMPERIAL_FLUID_OUNCE_ML = 28.4130625;

export const computed = {
  "borax-mq": () => amounts("metol-hydroquinone-borax-developer-1920s", 500),
  barnet: () => amounts("metol-hydroquinone-potash-developer", 1000),
  "barnet-imperial": () =>
    [200 * GRAIN_G, 6 * OUNCE_G, 150 * GRAIN_G, 50 * GRAIN_G, 2 * OUNCE_G].map(
      (mass) => mass / (80 * IMPERIAL_FLUID_OUNCE_ML * 0.001),
    ),
  "acid-fixer": () => amounts("acid-fixer", 1000),
  "hypo-1-in-5": () => amounts("plain-fixer", 1000),
};
