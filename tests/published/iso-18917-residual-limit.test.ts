import { computed } from "./iso-18917-residual-limit.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("iso-18917-residual-limit", computed);
