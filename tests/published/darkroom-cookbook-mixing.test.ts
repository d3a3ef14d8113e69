import { computed } from "./darkroom-cookbook-mixing.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("darkroom-cookbook-mixing", computed);
