import { runPublishedChecks } from "./run.ts";
import { computed } from "./us-army-ss0514-fault-directions.ts";

runPublishedChecks("us-army-ss0514-fault-directions", computed);
