import { computed } from "./chemical-list-edta.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("chemical-list-edta", computed);
