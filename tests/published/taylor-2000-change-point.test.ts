import { runPublishedChecks } from "./run.ts";
import { computed } from "./taylor-2000-change-point.ts";

runPublishedChecks("taylor-2000-change-point", computed);
