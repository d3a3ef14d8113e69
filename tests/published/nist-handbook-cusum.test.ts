import { computed } from "./nist-handbook-cusum.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-handbook-cusum", computed);
