import { readFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import type ts from "typescript";
import { type CellModule, problemInModule, typedModule } from "./cell-module.ts";
import type { CellProblem } from "./cell-problem.ts";
import { codeCells } from "./code-cells.ts";
import { IN_SOURCES, PACKAGE_FOLDER, typesResolver } from "./installation.ts";
import { parseNotebook } from "./notebook-file.ts";
import { optionalPackage } from "./optional-package.ts";

/** Errors of type in one notebook. */
export interface TypeReport {
  readonly file: string;
  readonly problems: readonly CellProblem[];
}

/**
 * Checks the TypeScript in the cells of notebooks, with the settings of the nearest
 * `tsconfig.json`; each notebook is one module of which no file is written.
 *
 * @param files paths of .ipynb files
 * @returns for each file, in the same order, its errors by cell and line
 */
export async function checkNotebookTypes(files: readonly string[]): Promise<readonly TypeReport[]> {
  const { default: typescript } = await optionalPackage("typescript", () => import("typescript"));
  const modules = new Map<string, CellModule>();
  const syntax = new Map<string, readonly CellProblem[]>();
  for (const file of files) {
    const path = resolve(file);
    const { cells, problems } = await codeCells(parseNotebook(file, await readFile(path, "utf8")));
    syntax.set(path, problems);
    modules.set(modulePath(path), typedModule(cells, typesResolver(dirname(path))));
  }
  const options = compilerOptions(typescript, dirname(resolve(files[0] ?? ".")));
  const host = hostWith(typescript, options, modules);
  const program = typescript.createProgram([...modules.keys()], options, host);
  return files.map((file) => {
    const path = resolve(file);
    const written = syntax.get(path) ?? [];
    if (written.length > 0) return { file, problems: written };
    return { file, problems: problemsOf(typescript, program, modulePath(path), modules) };
  });
}

function modulePath(path: string): string {
  return join(dirname(path), `.${path.split(/[\\/]/).at(-1)}.cells.mts`);
}

function problemsOf(
  typescript: typeof ts,
  program: ts.Program,
  path: string,
  modules: ReadonlyMap<string, CellModule>,
): readonly CellProblem[] {
  const source = program.getSourceFile(path);
  const module = modules.get(path);
  if (source === undefined || module === undefined) return [];
  const found = [
    ...program.getSyntacticDiagnostics(source),
    ...program.getSemanticDiagnostics(source),
  ];
  return found.map((each) => {
    const text = typescript.flattenDiagnosticMessageText(each.messageText, "\n");
    const line = source.getLineAndCharacterOfPosition(each.start ?? 0).line + 1;
    const message = `${text} (TS${each.code})`;
    const unplaced = { cell: 0, title: "no cell", line: 0, code: "", message };
    return problemInModule(module, line, message) ?? unplaced;
  });
}

function compilerOptions(typescript: typeof ts, folder: string): ts.CompilerOptions {
  const near = typescript.findConfigFile(folder, typescript.sys.fileExists);
  const file = near ?? (IN_SOURCES ? join(PACKAGE_FOLDER, "tsconfig.json") : undefined);
  const own: ts.CompilerOptions = {
    strict: true,
    target: typescript.ScriptTarget.ES2023,
    module: typescript.ModuleKind.NodeNext,
    moduleResolution: typescript.ModuleResolutionKind.NodeNext,
  };
  const read =
    file === undefined ? undefined : typescript.readConfigFile(file, typescript.sys.readFile);
  const config = { ...(read?.config as object | undefined), include: [], files: ["cells.mts"] };
  const parsed =
    file === undefined
      ? own
      : typescript.parseJsonConfigFileContent(config, typescript.sys, dirname(file)).options;
  const lib = [...(parsed.lib ?? ["lib.es2023.d.ts"]), "lib.dom.d.ts", "lib.dom.iterable.d.ts"];
  return {
    ...parsed,
    lib,
    noEmit: true,
    skipLibCheck: true,
    resolveJsonModule: true,
    allowImportingTsExtensions: true,
    isolatedModules: false,
    // A notebook ends cells with expressions to be shown, and declares what an exercise will use.
    noUnusedLocals: false,
    types: [],
  };
}

function hostWith(
  typescript: typeof ts,
  options: ts.CompilerOptions,
  modules: ReadonlyMap<string, CellModule>,
): ts.CompilerHost {
  const host = typescript.createCompilerHost(options);
  const { readFile: read, fileExists, getSourceFile } = host;
  host.readFile = (path) => modules.get(path)?.text ?? read(path);
  host.fileExists = (path) => modules.has(path) || fileExists(path);
  host.getSourceFile = (path, ...rest) => {
    const module = modules.get(path);
    if (module === undefined) return getSourceFile(path, ...rest);
    const [languageVersion] = rest;
    return typescript.createSourceFile(path, module.text, languageVersion);
  };
  return host;
}
