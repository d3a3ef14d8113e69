import { computed } from "./cusum-run-length-papers.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("cusum-run-length-papers", computed);
