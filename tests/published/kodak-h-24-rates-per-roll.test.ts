import { computed } from "./kodak-h-24-rates-per-roll.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-h-24-rates-per-roll", computed);
