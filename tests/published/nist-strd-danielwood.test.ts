import { computed } from "./nist-strd-danielwood.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-strd-danielwood", computed);
