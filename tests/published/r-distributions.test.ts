import { computed } from "./r-distributions.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("r-distributions", computed);
