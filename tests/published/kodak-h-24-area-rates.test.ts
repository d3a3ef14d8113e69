import { computed } from "./kodak-h-24-area-rates.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-h-24-area-rates", computed);
