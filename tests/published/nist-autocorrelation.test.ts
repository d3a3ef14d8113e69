import { computed } from "./nist-autocorrelation.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-autocorrelation", computed);
