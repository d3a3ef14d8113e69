import { computed } from "./kodak-ti2443-kit.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("kodak-ti2443-kit", computed);
