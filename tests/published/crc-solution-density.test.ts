import { computed } from "./crc-solution-density.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("crc-solution-density", computed);
