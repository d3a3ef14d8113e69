import { runPublishedChecks } from "./run.ts";
import { computed } from "./us-army-ss0509-8.ts";

runPublishedChecks("us-army-ss0509-8", computed);
