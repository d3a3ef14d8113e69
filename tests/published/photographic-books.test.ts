import { computed } from "./photographic-books.ts";
import { runPublishedChecks } from "./run.ts";

runPublishedChecks("photographic-books", computed);
