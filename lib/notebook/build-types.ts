import { join } from "node:path";
import ts from "typescript";

/**
 * Writes the type declarations of the library, from the entries given, under
 * `<outDir>/lib/<room>/`.
 *
 * @throws Error with the compiler's words if a declaration cannot be written
 */
export function emitTypes(root: string, outDir: string, entries: readonly string[]): void {
  const config = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config.config, ts.sys, root);
  const program = ts.createProgram([...entries], {
    ...options,
    noEmit: false,
    declaration: true,
    emitDeclarationOnly: true,
    rewriteRelativeImportExtensions: true,
    rootDir: root,
    outDir,
  });
  const faults = program.getOptionsDiagnostics();
  const diagnostics = [...faults, ...program.emit().diagnostics];
  if (diagnostics.length === 0) return;
  throw new Error(
    ts.formatDiagnostics(diagnostics, {
      getCanonicalFileName: (name) => name,
      getCurrentDirectory: () => root,
      getNewLine: () => "\n",
    }),
  );
}
