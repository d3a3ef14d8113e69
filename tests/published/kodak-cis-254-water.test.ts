import { computed } from "./kodak-cis-254-water.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-cis-254-water", computed);
