import { computed } from "./darkroom-cookbook.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("darkroom-cookbook", computed);
