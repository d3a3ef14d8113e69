import { computed } from "./iupac-2021-molar-masses.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("iupac-2021-molar-masses", computed);
