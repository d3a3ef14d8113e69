import { computed } from "./proportion-charts.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("proportion-charts", computed);
