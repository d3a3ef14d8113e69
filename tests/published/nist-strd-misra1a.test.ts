import { computed } from "./nist-strd-misra1a.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-strd-misra1a", computed);
