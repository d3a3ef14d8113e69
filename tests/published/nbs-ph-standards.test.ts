import { computed } from "./nbs-ph-standards.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("nbs-ph-standards", computed);
