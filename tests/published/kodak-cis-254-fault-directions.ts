import { colourNegativeFaults } from "wetside/control";
import { faultDirection } from "./fault-direction.ts";
import { type Computed, readSource } from "./run.ts";

export const computed: Computed = Object.fromEntries(
  readSource("kodak-cis-254-fault-directions").checks.map(({ id }) => [
    id,
    faultDirection(colourNegativeFaults),
  ]),
);
