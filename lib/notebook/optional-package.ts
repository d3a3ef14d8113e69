/** A package the runner or the pages need that is not installed. */
export class MissingPackageError extends Error {
  constructor(names: readonly string[]) {
    super(`this needs ${list(names)}; install with: npm install --save-dev ${names.join(" ")}`);
    this.name = "MissingPackageError";
  }
}

function list(names: readonly string[]): string {
  const words = names.length === 1 ? "a package that is" : "packages that are";
  return `${words} not installed: ${names.join(", ")}`;
}

/**
 * A package that the library does not bring along, because only notebooks need it.
 *
 * @throws MissingPackageError that says what to install
 */
export async function optionalPackage<T>(name: string, load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (error) {
    const code = (error as { code?: unknown }).code;
    const missing = code === "ERR_MODULE_NOT_FOUND" || code === "MODULE_NOT_FOUND";
    const about = error instanceof Error && error.message.includes(`'${name.split("/")[0]}`);
    throw missing && about ? new MissingPackageError([name]) : error;
  }
}
