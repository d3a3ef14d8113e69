import { computed } from "./jcgm-100-annex-h.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("jcgm-100-annex-h", computed);
