import { computed } from "./mann-kendall-exact-null.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("mann-kendall-exact-null", computed);
