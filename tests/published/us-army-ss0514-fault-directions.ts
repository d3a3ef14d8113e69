import { colourPaperFaults } from "wetside/control";
import { faultDirection } from "./fault-direction.ts";
import { type Computed, readSource } from "./run.ts";

export const computed: Computed = Object.fromEntries(
  readSource("us-army-ss0514-fault-directions").checks.map(({ id }) => [
    id,
    faultDirection(colourPaperFaults),
  ]),
);
