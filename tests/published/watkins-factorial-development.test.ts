import { runPublishedChecks } from "./run.ts";
import { computed } from "./watkins-factorial-development.ts";

runPublishedChecks("watkins-factorial-development", computed);
