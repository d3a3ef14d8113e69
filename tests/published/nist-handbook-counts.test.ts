import { computed } from "./nist-handbook-counts.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-handbook-counts", computed);
