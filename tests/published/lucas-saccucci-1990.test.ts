import { computed } from "./lucas-saccucci-1990.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("lucas-saccucci-1990", computed);
