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
  const left = new Map<string, number>();
  return batches.flatMap((batch) => {
    const source = sourceOf(batch, session);
    if (source === undefined) return [batch];
    const available = left.get(source.name) ?? source.bottleMl;
    const run = largestThatRuns(batch, available, session);
    const remaining = Math.max(0, available - (source.oneShot ? (run?.stockMl ?? 0) : 0));
    left.set(source.name, remaining);
    if (run?.films.length === batch.films.length) return [run];
    const whole = repack(batch.films.slice(run?.films.length ?? 0), session);
    const whyNot = `${source.name}: ${Math.floor(remaining)} mL are left and ${Math.ceil(whole.stockMl)} mL are needed`;
    return [...(run ? [run] : []), { ...whole, runs: false, whyNot }];
  });
}

/** The bottle a batch's developer comes out of, if one was given. */
export function sourceOf(batch: PlannedBatch, { bottles }: ReadSession) {
  const given = batch.films[0]?.developer?.given;
  if (given) return { ...given, oneShot: given.use === "one-shot" };
  const bottle = bottles.find((each) => each.bath === "developer");
  if (bottle === undefined) return undefined;
  return {
    ...bottle,
    name: "developer",
    bottleMl: bottle.volumeMl,
    oneShot: bottle.oneShot ?? false,
  };
}

function largestThatRuns(batch: PlannedBatch, availableMl: number, session: ReadSession) {
  for (let films = batch.films.length; films > 0; films--) {
    const fewer =
      films === batch.films.length ? batch : repack(batch.films.slice(0, films), session);
    if (fewer.stockMl <= availableMl + 1e-9) return fewer;
  }
  return undefined;
}

function repack(films: readonly ReadFilm[], session: ReadSession): PlannedBatch {
  return packGroup({ label: "", films }, session).batches[0] as PlannedBatch;
}
