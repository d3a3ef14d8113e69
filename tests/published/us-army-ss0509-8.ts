import { bathFormula, ratioStrength } from "wetside/solutions";

export const computed = {
  strength: () => 28 * ratioStrength("1.5+32"),
  "library-stop": () => bathFormula("acetic-stop-bath").ingredients[0]?.mlPerL ?? Number.NaN,
};
