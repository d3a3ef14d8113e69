import { computed } from "./kodak-z-131-developer-by-hand.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-z-131-developer-by-hand", computed);
