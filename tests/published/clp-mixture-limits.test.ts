import { computed } from "./clp-mixture-limits.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("clp-mixture-limits", computed);
