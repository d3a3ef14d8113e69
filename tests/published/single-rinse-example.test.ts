import { runPublishedChecks } from "./run.ts";
import { computed } from "./single-rinse-example.ts";

runPublishedChecks("single-rinse-example", computed);
