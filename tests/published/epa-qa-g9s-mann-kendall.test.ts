import { computed } from "./epa-qa-g9s-mann-kendall.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("epa-qa-g9s-mann-kendall", computed);
