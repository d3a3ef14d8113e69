import { computed } from "./process-limits.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("process-limits", computed);
