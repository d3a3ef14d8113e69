import { writeFileSync } from "node:fs";
import { demoLabFiles } from "./make/files.ts";

// Writes the demo lab's files beside this script: npx tsx data/pellow-street/make.ts
for (const [name, text] of Object.entries(demoLabFiles())) {
  writeFileSync(new URL(name, import.meta.url), text);
  console.log(`data/pellow-street/${name}: ${text.split("\n").length - 1} lines`);
}
