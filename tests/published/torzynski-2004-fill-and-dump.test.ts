import { runPublishedChecks } from "./run.ts";
import { computed } from "./torzynski-2004-fill-and-dump.ts";

runPublishedChecks("torzynski-2004-fill-and-dump", computed);
