import { computed } from "./montgomery-piston-rings.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("montgomery-piston-rings", computed);
