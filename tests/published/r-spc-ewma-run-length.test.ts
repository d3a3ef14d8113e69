import { computed } from "./r-spc-ewma-run-length.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("r-spc-ewma-run-length", computed);
