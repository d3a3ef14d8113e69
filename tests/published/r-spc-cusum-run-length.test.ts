import { computed } from "./r-spc-cusum-run-length.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("r-spc-cusum-run-length", computed);
