import { runPublishedChecks } from "./run.ts";
import { computed } from "./substitution-factors.ts";

runPublishedChecks("substitution-factors", computed);
