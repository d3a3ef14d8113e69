import { computed } from "./kodak-cis-254-fault-directions.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-cis-254-fault-directions", computed);
