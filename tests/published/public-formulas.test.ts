import { computed } from "./public-formulas.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("public-formulas", computed);
