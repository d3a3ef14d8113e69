import { runPublishedChecks } from "./run.ts";
import { computed } from "./run-rule-window-probabilities.ts";

runPublishedChecks("run-rule-window-probabilities", computed);
