import { computed } from "./aiag-gauge-study.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("aiag-gauge-study", computed);
