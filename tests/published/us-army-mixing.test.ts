import { runPublishedChecks } from "./run.ts";
import { computed } from "./us-army-mixing.ts";

runPublishedChecks("us-army-mixing", computed);
