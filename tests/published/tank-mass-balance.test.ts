import { runPublishedChecks } from "./run.ts";
import { computed } from "./tank-mass-balance.ts";

runPublishedChecks("tank-mass-balance", computed);
