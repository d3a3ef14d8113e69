import { runPublishedChecks } from "./run.ts";
import { computed } from "./scipy-development.ts";

runPublishedChecks("scipy-development", computed);
