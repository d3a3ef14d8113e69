import { runPublishedChecks } from "./run.ts";
import { computed } from "./us-army-ss0509-small-tank.ts";

runPublishedChecks("us-army-ss0509-small-tank", computed);
