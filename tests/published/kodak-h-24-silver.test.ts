import { computed } from "./kodak-h-24-silver.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-h-24-silver", computed);
