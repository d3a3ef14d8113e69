import { computed } from "./nist-handbook-cusum-run-length.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-handbook-cusum-run-length", computed);
