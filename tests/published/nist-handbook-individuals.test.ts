import { computed } from "./nist-handbook-individuals.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-handbook-individuals", computed);
