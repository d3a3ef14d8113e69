import { writeFileSync } from "node:fs";
import { checksPage, printedSources } from "./checks-page.ts";

// Prints every published value beside what wetside computes, and writes docs/checks.md.

const sources = await printedSources();
for (const { source, checks } of sources) {
  console.log(`\n${source.source}`);
  for (const { quantity, published, computed, deviation, disagrees } of checks) {
    console.log(
      `  ${quantity}: published ${published}, computed ${computed}, deviation ${deviation}`,
    );
    if (disagrees !== undefined) console.log(`    disagrees: ${disagrees}`);
  }
}
writeFileSync(new URL("../../docs/checks.md", import.meta.url), checksPage(sources));
const all = sources.flatMap(({ checks }) => checks);
const explained = all.filter(({ disagrees }) => disagrees !== undefined);
console.log(
  `\n${all.length} published values, ${explained.length} explained disagreements; written to docs/checks.md`,
);
