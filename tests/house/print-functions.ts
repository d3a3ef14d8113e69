import { writeFileSync } from "node:fs";
import { functionIndex, functionPage } from "./function-index.ts";

// Writes docs/functions.md: every public function with the first sentence of its doc comment.

const all = await functionIndex();
writeFileSync(new URL("../../docs/functions.md", import.meta.url), functionPage(all));
console.log(`${all.length} functions; written to docs/functions.md`);
