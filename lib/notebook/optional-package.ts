import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { PACKAGE_FOLDER } from "./installation.ts";

const require = createRequire(import.meta.url);

/** Packages that the runner or the pages need and that are not installed. */
export class MissingPackageError extends Error {
  constructor(names: readonly string[]) {
    const packages = names.length === 1 ? "a package that is" : "packages that are";
    const install = names.map(withVersion).join(" ");
    super(
      `this needs ${packages} not installed: ${names.join(", ")}; install with: npm install --save-dev ${install}`,
    );
    this.name = "MissingPackageError";
  }
}

/** The package with the versions that wetside was tested with, as npm takes it. */
function withVersion(name: string): string {
  const file = JSON.parse(readFileSync(join(PACKAGE_FOLDER, "package.json"), "utf8")) as {
    readonly [kind: string]: { readonly [name: string]: string } | undefined;
  };
  const range = file.peerDependencies?.[name] ?? file.devDependencies?.[name];
  return range === undefined ? name : `"${name}@${range}"`;
}

/**
 * Refuses to go on without packages that the library does not bring along, because only notebooks
 * need them.
 *
 * @throws MissingPackageError that names all that are missing
 */
export function requirePackages(names: readonly string[]): void {
  const missing = names.filter((name) => {
    try {
      require.resolve(name);
      return false;
    } catch (error) {
      return (error as { code?: unknown }).code === "MODULE_NOT_FOUND";
    }
  });
  if (missing.length > 0) throw new MissingPackageError(missing);
}

/** A package that is loaded only when it is needed. @throws MissingPackageError if it is not there */
export async function optionalPackage<T>(name: string, load: () => Promise<T>): Promise<T> {
  requirePackages([name]);
  return await load();
}
