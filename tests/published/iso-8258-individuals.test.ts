import { computed } from "./iso-8258-individuals.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("iso-8258-individuals", computed);
