import { runPublishedChecks } from "./run.ts";
import { computed } from "./shewhart-factors.ts";

runPublishedChecks("shewhart-factors", computed);
