import { computed } from "./counter-current-rinse.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("counter-current-rinse", computed);
