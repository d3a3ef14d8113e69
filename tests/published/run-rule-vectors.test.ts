import { runPublishedChecks } from "./run.ts";
import { computed } from "./run-rule-vectors.ts";

runPublishedChecks("run-rule-vectors", computed);
