import { runPublishedChecks } from "./run.ts";
import { computed } from "./run-rules-exact-run-length.ts";

runPublishedChecks("run-rules-exact-run-length", computed);
