import { computed } from "./nist-strd-norris.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nist-strd-norris", computed);
