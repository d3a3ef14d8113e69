import { computed } from "./graybill-iyer-calibration.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("graybill-iyer-calibration", computed);
