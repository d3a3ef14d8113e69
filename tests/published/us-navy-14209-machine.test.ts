import { runPublishedChecks } from "./run.ts";
import { computed } from "./us-navy-14209-machine.ts";

runPublishedChecks("us-navy-14209-machine", computed);
