import { computed } from "./matrix-exponential.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("matrix-exponential", computed);
