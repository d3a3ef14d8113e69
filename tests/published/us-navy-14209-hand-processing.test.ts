import { runPublishedChecks } from "./run.ts";
import { computed } from "./us-navy-14209-hand-processing.ts";

runPublishedChecks("us-navy-14209-hand-processing", computed);
