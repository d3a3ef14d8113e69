/**
 * The path of a file that stands beside another one: a plain name is looked for in the other file's
 * folder; a name with a folder in it is a path already and stays as it is.
 *
 * @param path the file whose folder is meant, `"../data/my-lab/strips.csv"`
 * @param name the other file, `"strip-batches.csv"`; `""` for none
 * @returns its path; `""` for no name
 *
 * @example
 * fileBeside("../data/my-lab/strips.csv", "strip-batches.csv") // => "../data/my-lab/strip-batches.csv"
 */
export function fileBeside(path: string, name: string): string {
  if (name === "" || /[/\\]/.test(name)) return name;
  return path.replace(/[^/\\]*$/, "") + name;
}
