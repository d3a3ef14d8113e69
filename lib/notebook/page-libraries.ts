import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { packageFile } from "./installation.ts";
import { optionalPackage } from "./optional-package.ts";

const require = createRequire(import.meta.url);

/** The page's own script, in parts. */
export const PAGE_SCRIPTS = ["page-pixels.js", "page-fit.js", "page-script.js"] as const;

/** The scripts a page needs, in order; a drawing library only if the page has such a figure. */
export async function pageLibraries(uses: {
  readonly vega: boolean;
  readonly plotly: boolean;
}): Promise<readonly string[]> {
  const scripts: string[] = [];
  if (uses.vega) {
    scripts.push(await libraryText("vega", "build/vega.min.js"));
    scripts.push(await libraryText("vega-lite", "build/vega-lite.min.js"));
  }
  if (uses.plotly) scripts.push(await libraryText("plotly.js-dist-min", "plotly.min.js"));
  const own = PAGE_SCRIPTS.map((name) => readFile(packageFile(name), "utf8"));
  scripts.push(inScript((await Promise.all(own)).join("\n")));
  return scripts;
}

async function libraryText(name: string, file: string): Promise<string> {
  const folder = await optionalPackage(name, async () => packageFolder(name));
  return inScript(await readFile(join(folder, file), "utf8"));
}

function packageFolder(name: string): string {
  try {
    return dirname(require.resolve(`${name}/package.json`));
  } catch (error) {
    if ((error as { code?: string }).code !== "ERR_PACKAGE_PATH_NOT_EXPORTED") throw error;
    const entry = require.resolve(name);
    const end = entry.lastIndexOf(join("node_modules", name)) + join("node_modules", name).length;
    return entry.slice(0, end);
  }
}

/** Text that cannot end the script element it stands in, and asks for no other file. */
function inScript(text: string): string {
  return text
    .replace(/<(\/script|!--)/gi, "\\x3c$1")
    .replace(/\n?\/\/# sourceMappingURL=\S*\s*$/, "");
}
