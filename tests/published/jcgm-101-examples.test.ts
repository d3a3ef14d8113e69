import { computed } from "./jcgm-101-examples.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("jcgm-101-examples", computed);
