import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { faultById } from "./fault-by-id.ts";
import type { FaultTable, WholeSignature } from "./fault-table.ts";

/**
 * A copy of a table in which one fault has a signature of the lab's own.
 *
 * The fault gets a pattern of its own, named for it; faults that shared its old pattern keep that.
 *
 * @param table the table to start from
 * @param fault id of the fault
 * @param signature components, mean and covariance at size 1, as `signatureFromEpisodes` gives it
 * @returns a new table; the new pattern is marked `"the lab's own"`
 * @throws InputError for an unknown fault or shapes that do not agree
 *
 * @example
 * const signature = { components: [{ parameter: "ld", colour: "red" as const }], mean: [0.06], covariance: [[0.0001]] };
 * faultById(withSignature(colourNegativeFaults, "developer-too-warm", signature), "developer-too-warm").pattern // => "own-developer-too-warm"
 */
export function withSignature(
  table: FaultTable,
  fault: string,
  signature: WholeSignature,
): FaultTable {
  requireObject("withSignature", "table", table, "an object with process, name, note, …");
  requireEntries("withSignature", "faults", table.faults);
  requireObject("withSignature", "patterns", table.patterns, "an object");
  requireObject(
    "withSignature",
    "signature",
    signature,
    "an object with components, mean and covariance",
  );
  requireEntries("withSignature", "covariance", signature.covariance);
  requireEntries("withSignature", "mean", signature.mean, "a list of numbers");
  requireEntries("withSignature", "components", signature.components);
  const entry = faultById(table, fault);
  const p = signature.components.length;
  const agree =
    signature.mean.length === p &&
    signature.covariance.length === p &&
    signature.covariance.every((row) => row.length === p);
  if (!agree || p === 0) {
    const advice = `write ${p} means and ${p} rows of ${p} covariances, one for each component`;
    throw new InputError("withSignature", "signature", p, advice);
  }
  const old = table.patterns[entry.pattern];
  const id = entry.pattern.startsWith("own-") ? entry.pattern : `own-${entry.id}`;
  const pattern = {
    words: `${entry.name}, as in this lab's own episodes`,
    shape: old?.shape ?? {},
    howObtained: "the lab's own" as const,
    published: old?.published ?? [],
    whole: signature,
  };
  return {
    ...table,
    patterns: { ...table.patterns, [id]: pattern },
    faults: table.faults.map((each) => (each.id === fault ? { ...each, pattern: id } : each)),
  };
}
