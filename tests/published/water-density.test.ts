import { runPublishedChecks } from "./run.ts";
import { computed } from "./water-density.ts";

runPublishedChecks("water-density", computed);
