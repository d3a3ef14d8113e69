import { computed } from "./npl-dem-es-011.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("npl-dem-es-011", computed);
