/** Builds the package into dist/: run by `npm run build`, and by npm before it packs. */
import { createHash } from "node:crypto";
import { cp, mkdir, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Metafile } from "esbuild";
import { licenceTexts } from "./build-licences.ts";
import { emitTypes } from "./build-types.ts";
import { PAGE_SCRIPTS } from "./page-libraries.ts";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const LIB = join(ROOT, "lib");
const DIST = join(ROOT, "dist");
/** Bundled in, so that what is installed stays light; every other package stays an import. */
const BUNDLED = /^@stdlib\//;
/** An import of another package, or of a table in data/. */
const HEAVY_IMPORT = /^import .* from "(?:[^.]|.*\.json")/m;

interface PackageFile {
  readonly [kind: string]: unknown;
}

const inputs = await inputStamp();
const before = await readFile(join(DIST, "built-from.txt"), "utf8").catch(() => "");
if (before === inputs) console.log("dist/ is up to date");
else {
  const start = performance.now();
  const files = await buildInto(join(ROOT, "out", `build-${process.pid}`));
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`dist/ built in ${seconds} s (${files} modules)`);
}

async function buildInto(folder: string): Promise<number> {
  await mkdir(folder, { recursive: true });
  try {
    const metafile = await bundle(folder);
    for (const name of ["page.css", ...PAGE_SCRIPTS]) {
      await cp(join(LIB, "notebook", name), join(folder, "notebook", name));
    }
    emitTypes(ROOT, join(folder, "types"), await rooms());
    const licences = await licenceTexts(ROOT, metafile);
    await writeFile(join(folder, "THIRD-PARTY-LICENSES.txt"), licences);
    await writeFile(join(folder, "built-from.txt"), inputs);
    await rm(DIST, { recursive: true, force: true });
    await rename(folder, DIST).catch(() => cp(folder, DIST, { recursive: true }));
    return Object.keys(metafile.inputs).length;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function bundle(outdir: string): Promise<Metafile> {
  const entryPoints = [
    ...(await rooms()),
    ...(await heavyModules()),
    join(LIB, "notebook", "cli.ts"),
    join(LIB, "notebook", "cell-process.ts"),
  ];
  const { metafile } = await build({
    entryPoints,
    outdir,
    outbase: LIB,
    absWorkingDir: ROOT,
    bundle: true,
    format: "esm",
    splitting: true,
    platform: "neutral",
    mainFields: ["browser", "module", "main"],
    conditions: ["wetside-source", "import", "module", "default"],
    target: "node20",
    external: ["node:*", ...(await externalPackages())],
    legalComments: "linked",
    chunkNames: "chunks/[name]-[hash]",
    metafile: true,
    logLevel: "warning",
  });
  return metafile;
}

/** The index of every room, and of the whole library. */
async function rooms(): Promise<readonly string[]> {
  const entries = await readdir(LIB, { withFileTypes: true });
  const folders = entries.filter((each) => each.isDirectory()).map(({ name }) => name);
  return [join(LIB, "index.ts"), ...folders.sort().map((name) => join(LIB, name, "index.ts"))];
}

/**
 * Modules that lean on another package or a table. Each gets a file of its own, so that whoever
 * bundles one function of a room for a page does not take along what all the others lean on.
 */
async function heavyModules(): Promise<readonly string[]> {
  const entries = await readdir(LIB, { withFileTypes: true, recursive: true });
  const paths = entries
    .filter((each) => each.isFile() && each.name.endsWith(".ts"))
    .map((each) => join(each.parentPath, each.name))
    .filter((path) => !path.startsWith(join(LIB, "notebook")));
  const texts = await Promise.all(paths.map((path) => readFile(path, "utf8")));
  return paths.filter((_, i) => HEAVY_IMPORT.test(texts[i] ?? "")).sort();
}

async function externalPackages(): Promise<readonly string[]> {
  const file = JSON.parse(await readFile(join(ROOT, "package.json"), "utf8")) as PackageFile;
  const kinds = ["dependencies", "peerDependencies", "devDependencies"];
  const names = kinds.flatMap((kind) => Object.keys((file[kind] as object | undefined) ?? {}));
  return [...new Set(names)].filter((name) => !BUNDLED.test(name));
}

/** A digest of name, size and time of every file the build depends on. */
async function inputStamp(): Promise<string> {
  const paths = [join(ROOT, "package.json"), join(ROOT, "tsconfig.json")];
  for (const folder of [LIB, join(ROOT, "data")]) {
    const entries = await readdir(folder, { withFileTypes: true, recursive: true });
    for (const each of entries) if (each.isFile()) paths.push(join(each.parentPath, each.name));
  }
  const lines = paths.sort().map(async (path) => {
    const { size, mtimeMs } = await stat(path);
    return `${relative(ROOT, path)} ${size} ${mtimeMs}`;
  });
  const all = (await Promise.all(lines)).join("\n");
  return `${createHash("sha256").update(all).digest("hex")}\n`;
}
