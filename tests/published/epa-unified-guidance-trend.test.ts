import { computed } from "./epa-unified-guidance-trend.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("epa-unified-guidance-trend", computed);
