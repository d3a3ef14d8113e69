import { computed } from "./iso-7870-2-subgroups.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("iso-7870-2-subgroups", computed);
