import { computed } from "./control-strip-arithmetic.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("control-strip-arithmetic", computed);
