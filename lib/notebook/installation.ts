import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

/** True if this runs from the sources in the repository and not from a build. */
export const IN_SOURCES = import.meta.url.endsWith(".ts");

/** Folder of the package: two above this file, in the sources and in a build. */
export const PACKAGE_FOLDER = fileURLToPath(new URL("../../", import.meta.url));

/** A file of this room that is read as a file, in the sources or in a build. */
export function packageFile(name: string): string {
  return join(PACKAGE_FOLDER, IN_SOURCES ? "lib" : "dist", "notebook", name);
}

/** The release of this package. */
export function packageVersion(): string {
  return JSON.parse(readFileSync(join(PACKAGE_FOLDER, "package.json"), "utf8")).version;
}

/**
 * Gives the name under which a cell's import of this package is found. Below a package that has
 * wetside installed (or in the repository itself) that is the plain name; elsewhere it is the
 * address of the package this runner belongs to, so that a notebook in any folder runs.
 */
export function packageResolver(folder: string): (from: string) => string {
  return resolver(folder, (room) => {
    const file = IN_SOURCES ? join("lib", room, "index.ts") : join("dist", room, "index.js");
    return pathToFileURL(join(PACKAGE_FOLDER, file)).href;
  });
}

/** The same for the type checker, which takes paths and not addresses. */
export function typesResolver(folder: string): (from: string) => string {
  const root = IN_SOURCES ? "lib" : join("dist", "types", "lib");
  const file = IN_SOURCES ? "index.ts" : "index.d.ts";
  return resolver(folder, (room) => join(PACKAGE_FOLDER, root, room, file));
}

function resolver(folder: string, roomPath: (room: string) => string): (from: string) => string {
  const found = findsWetside(folder);
  return (from) => {
    const room = /^wetside(?:\/([a-z-]+))?$/.exec(from);
    return room === null || found ? from : roomPath(room[1] ?? ".");
  };
}

function findsWetside(folder: string): boolean {
  for (let here = folder; ; here = dirname(here)) {
    if (existsSync(join(here, "node_modules", "wetside", "package.json"))) return true;
    if (existsSync(join(here, "package.json"))) {
      const { name } = JSON.parse(readFileSync(join(here, "package.json"), "utf8"));
      if (name === "wetside") return true;
    }
    if (dirname(here) === here) return false;
  }
}
