import { computed } from "./eurachem-cg4-a1.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("eurachem-cg4-a1", computed);
