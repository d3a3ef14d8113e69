import { computed } from "./crc-pka.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("crc-pka", computed);
