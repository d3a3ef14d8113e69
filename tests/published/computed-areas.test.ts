import { computed } from "./computed-areas.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("computed-areas", computed);
