import { computed } from "./kodak-d-32-transport.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-d-32-transport", computed);
