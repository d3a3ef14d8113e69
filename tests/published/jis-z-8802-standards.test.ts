import { computed } from "./jis-z-8802-standards.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("jis-z-8802-standards", computed);
