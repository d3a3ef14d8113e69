import { computed } from "./heat-balance.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("heat-balance", computed);
