import { computed } from "./nist-handbook-ewma.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-handbook-ewma", computed);
