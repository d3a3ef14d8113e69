import { computed } from "./champ-woodall-1987.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("champ-woodall-1987", computed);
