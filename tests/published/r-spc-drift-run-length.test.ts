import { computed } from "./r-spc-drift-run-length.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("r-spc-drift-run-length", computed);
