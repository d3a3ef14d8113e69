import { computed } from "./kodak-z-119-replenisher-area.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-z-119-replenisher-area", computed);
