import { computed } from "./lange-buffer-values.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("lange-buffer-values", computed);
