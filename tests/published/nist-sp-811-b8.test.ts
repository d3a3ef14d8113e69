import { computed } from "./nist-sp-811-b8.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-sp-811-b8", computed);
