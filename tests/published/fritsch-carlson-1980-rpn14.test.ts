import { computed } from "./fritsch-carlson-1980-rpn14.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("fritsch-carlson-1980-rpn14", computed);
