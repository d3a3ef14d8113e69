import type { FilmGroup } from "./group-films.ts";
import { type PackedBatches, type PackingKind, packBatches } from "./pack-batches.ts";
import type { ReadFilm } from "./read-films.ts";
import type { ReadSession } from "./read-session.ts";

/** Films that go through the tank together, with the developer they take. */
export interface PlannedBatch {
  readonly films: readonly ReadFilm[];
  readonly spirals: number;
  /** What covers the spirals, mL. */
  readonly coverMl: number;
  /** Working solution, whole mL. */
  readonly volumeMl: number;
  readonly stockMl: number;
  readonly runs: boolean;
  readonly whyNot: string | null;
}

/** Packs one group into as few tanks as possible. */
export function packGroup(
  group: FilmGroup,
  session: ReadSession,
): { readonly batches: readonly PlannedBatch[]; readonly proven: boolean } {
  const byKind = new Map<string, ReadFilm[]>();
  for (const film of group.films) {
    const key = `${film.spiral.name}/${film.leastMl}`;
    byKind.set(key, [...(byKind.get(key) ?? []), film]);
  }
  const queues = [...byKind.values()].map((films) => [...films]);
  const kinds = queues.flatMap((films): PackingKind[] => {
    const one = films[0];
    if (one === undefined) return [];
    return [{ spiral: one.spiral, leastMl: one.leastMl, films: films.length }];
  });
  const { batches, proven }: PackedBatches = packBatches(kinds, session.tank);
  return {
    proven,
    batches: batches.map(({ films, ...packed }) =>
      plannedBatch(
        films.flatMap((count, i) => queues[i]?.splice(0, count) ?? []),
        packed,
        session,
      ),
    ),
  };
}

/** Volumes of a batch in whole millilitres, never above the tank. */
function plannedBatch(
  films: readonly ReadFilm[],
  packed: { readonly volumeMl: number; readonly coverMl: number; readonly spirals: number },
  { tank }: ReadSession,
): PlannedBatch {
  const volumeMl = Math.min(tank.fullMl, Math.ceil(packed.volumeMl - 1e-9));
  const share = films[0]?.developer?.stockShare ?? 1;
  return { ...packed, films, volumeMl, stockMl: volumeMl * share, runs: true, whyNot: null };
}

/**
 * Runs batches until a developer's bottle is empty. A batch it cannot fill runs with fewer films if
 * that helps; films that are left wait, in a batch that does not run.
 */
export function shareStock(
  batches: readonly PlannedBatch[],
  session: ReadSession,
): readonly PlannedBatch[] {
  const used = new Map<string, number>();
  const left = (source: StockSource) => source.bottleMl - (used.get(source.name) ?? 0);
  return batches.flatMap((batch) => {
    const run = largestThatRuns(batch, session, left);
    for (const source of run === undefined ? [] : sourcesOf(run, session)) {
      if (!source.oneShot) continue;
      used.set(source.name, (used.get(source.name) ?? 0) + source.neededMl);
    }
    if (run?.films.length === batch.films.length) return [run];
    const whole = repack(batch.films.slice(run?.films.length ?? 0), session);
    const whyNot = sourcesOf(whole, session)
      .filter((source) => source.neededMl > left(source) + HAIR_ML)
      .map(
        (source) =>
          `${source.name}: ${Math.floor(Math.max(0, left(source)))} mL are left and ${Math.ceil(source.neededMl - HAIR_ML)} mL are needed`,
      )
      .join("; ");
    return [...(run ? [run] : []), { ...whole, runs: false, whyNot }];
  });
}

/** A bottle that a batch's developer comes out of, and what the batch takes. */
export interface StockSource {
  readonly name: string;
  readonly bottleMl: number;
  readonly neededMl: number;
  /** Poured away afterwards, so that the next batch needs as much again. */
  readonly oneShot: boolean;
}

/** Sums of volumes that were meant to be equal. */
const HAIR_ML = 1e-9;

/** The bottles a batch's developer comes out of, as far as they were given. */
export function sourcesOf(
  { films, volumeMl }: PlannedBatch,
  { bottles }: ReadSession,
): readonly StockSource[] {
  const developer = films[0]?.developer;
  if (developer) {
    const oneShot = developer.given.use === "one-shot";
    return developer.parts.map(({ name, bottleMl, share }) => ({
      name,
      bottleMl,
      neededMl: volumeMl * share,
      oneShot,
    }));
  }
  return bottles
    .filter((each) => each.bath === "developer")
    .map(({ volumeMl: bottleMl, oneShot }) => ({
      name: "developer",
      bottleMl,
      neededMl: volumeMl,
      oneShot: oneShot ?? false,
    }));
}

function largestThatRuns(
  batch: PlannedBatch,
  session: ReadSession,
  left: (source: StockSource) => number,
): PlannedBatch | undefined {
  for (let films = batch.films.length; films > 0; films--) {
    const fewer =
      films === batch.films.length ? batch : repack(batch.films.slice(0, films), session);
    const sources = sourcesOf(fewer, session);
    if (sources.every((source) => source.neededMl <= left(source) + HAIR_ML)) return fewer;
  }
  return undefined;
}

function repack(films: readonly ReadFilm[], session: ReadSession): PlannedBatch {
  return packGroup({ label: "", films }, session).batches[0] as PlannedBatch;
}
