import { runPublishedChecks } from "./run.ts";
import { computed } from "./water-ionization.ts";

runPublishedChecks("water-ionization", computed);
