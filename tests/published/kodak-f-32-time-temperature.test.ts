import { computed } from "./kodak-f-32-time-temperature.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-f-32-time-temperature", computed);
