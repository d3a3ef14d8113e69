import { runPublishedChecks } from "./run.ts";
import { computed } from "./scipy-constants.ts";

runPublishedChecks("scipy-constants", computed);
