import { runPublishedChecks } from "./run.ts";
import { computed } from "./us-army-tm-11-2323.ts";

runPublishedChecks("us-army-tm-11-2323", computed);
