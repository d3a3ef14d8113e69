import { computed } from "./pettitt-1979.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("pettitt-1979", computed);
