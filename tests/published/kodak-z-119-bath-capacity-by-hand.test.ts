import { computed } from "./kodak-z-119-bath-capacity-by-hand.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-z-119-bath-capacity-by-hand", computed);
