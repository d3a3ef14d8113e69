import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { requireBathTemperature } from "./bath-temperature.ts";
import { kelvin } from "./kelvin.ts";
import { type RateModel, type RateReach, requireWithinReach } from "./rate-model.ts";
import { checkedReach } from "./rate-reach.ts";
import { requireMinutes } from "./require-minutes.ts";
import { shown } from "./shown.ts";

/** One row of a time–temperature table. */
export interface TimeTemperatureRow {
  readonly temperatureC: number;
  readonly timeMin: number;
}

/** A rate read from a table of times, with the table it was read from. */
export interface PublishedTableModel extends RateModel {
  readonly kind: "published-table";
  readonly rows: readonly TimeTemperatureRow[];
}

/**
 * A rate model straight from a printed table of developing times.
 *
 * The relative rate is t(T_ref)/t(T). Between two rows ln t is a straight line against 1/T (kelvin),
 * so that every printed row comes back exactly. Beyond the table the straight line through the
 * first and last rows goes on from the end row: the last step alone would carry its rounding out.
 *
 * @param input.rows at least two rows of different temperature: °C and minutes, in any order; the
 * time must never grow with temperature
 * @param input.referenceTemperatureC temperature at which the rate is 1, °C, inside the table;
 * default 20 if inside, else the row nearest to 20
 * @param input.range default the table's own; `refuseBeyondC` default the table's width
 * @returns the model
 * @throws InputError for fewer than two rows, equal temperatures, times that grow with temperature,
 * a reference outside the table, or a range that is wider than the table
 *
 * @example
 * const rows = [{ temperatureC: 20, timeMin: 8 }, { temperatureC: 24, timeMin: 6 }]
 * publishedTableModel({ rows }).relativeRate(24) // => 1.33333
 *
 * Source: interpolation of ln t against 1/T, from the Arrhenius equation (IUPAC Gold Book A00446).
 */
export function publishedTableModel(
  input: {
    readonly rows: readonly TimeTemperatureRow[];
    readonly referenceTemperatureC?: number;
  } & RateReach,
): PublishedTableModel {
  const where = "publishedTableModel";
  requireObject(where, "input", input, "an object with rows");
  const rows = checkedTimeTable(where, input.rows);
  for (const [i, row] of rows.entries()) {
    const next = rows[i + 1];
    if (next !== undefined && next.timeMin > row.timeMin) {
      const advice = `write times that do not grow with temperature (${shown(row.timeMin)} min at ${shown(row.temperatureC)} °C is shorter than ${shown(next.timeMin)} min at ${shown(next.temperatureC)} °C)`;
      throw new InputError(where, "rows", "a time that grows", advice);
    }
  }
  const table = { minC: rows.at(0)?.temperatureC ?? 0, maxC: rows.at(-1)?.temperatureC ?? 0 };
  const reference = input.referenceTemperatureC ?? nearestTo20(rows);
  requireNumber(where, "referenceTemperatureC", reference, {
    min: table.minC,
    max: table.maxC,
    unit: "°C",
    hint: "the reference must lie inside the table",
  });
  const reach = checkedReach(where, reference, {
    range: input.range ?? table,
    refuseBeyondC: input.refuseBeyondC ?? table.maxC - table.minC,
  });
  const lnReferenceTime = lnTimeAt(rows, reference);
  return {
    kind: "published-table",
    rows,
    referenceTemperatureC: reference,
    ...reach,
    description: `table of ${rows.length} times from ${shown(table.minC)} to ${shown(table.maxC)} °C, rate 1 at ${shown(reference)} °C`,
    assumptions: [
      "between printed rows ln(time) is a straight line against 1/T",
      "printed times are rounded, and the rounding goes through into the answer",
    ],
    relativeRate(temperatureC: number): number {
      requireWithinReach("relativeRate", "temperatureC", temperatureC, reach);
      return Math.exp(lnReferenceTime - lnTimeAt(rows, temperatureC));
    },
  };
}

/** Checks a table of times and returns it sorted from cold to warm. */
export function checkedTimeTable(
  where: string,
  given: readonly TimeTemperatureRow[],
): readonly TimeTemperatureRow[] {
  if (!Array.isArray(given) || given.length < 2) {
    const advice = "write at least two rows { temperatureC, timeMin } of different temperature";
    throw new InputError(where, "rows", given, advice);
  }
  const rows = given.map((row: TimeTemperatureRow | null, i) => ({
    temperatureC: requireBathTemperature(where, `rows[${i}].temperatureC`, row?.temperatureC),
    timeMin: requireMinutes(where, `rows[${i}].timeMin`, row?.timeMin),
  }));
  rows.sort((a, b) => a.temperatureC - b.temperatureC);
  for (const [i, row] of rows.entries()) {
    if (row.temperatureC === rows[i + 1]?.temperatureC) {
      const advice = "write one row for each temperature (average repeated times first)";
      throw new InputError(where, "rows", `two times at ${shown(row.temperatureC)} °C`, advice);
    }
  }
  return rows;
}

function nearestTo20(rows: readonly TimeTemperatureRow[]): number {
  const low = rows.at(0)?.temperatureC ?? 20;
  const high = rows.at(-1)?.temperatureC ?? 20;
  return Math.min(Math.max(20, low), high);
}

function lnTimeAt(rows: readonly TimeTemperatureRow[], temperatureC: number): number {
  const first = rows.at(0);
  const last = rows.at(-1);
  if (first === undefined || last === undefined) return Number.NaN;
  if (temperatureC < first.temperatureC) return onLine(first, last, first, temperatureC);
  if (temperatureC > last.temperatureC) return onLine(first, last, last, temperatureC);
  const upper = rows.findIndex((row) => row.temperatureC >= temperatureC);
  const right = rows[Math.max(upper, 1)] ?? last;
  const left = rows[Math.max(upper, 1) - 1] ?? first;
  return onLine(left, right, temperatureC === right.temperatureC ? right : left, temperatureC);
}

function onLine(
  a: TimeTemperatureRow,
  b: TimeTemperatureRow,
  from: TimeTemperatureRow,
  temperatureC: number,
): number {
  const slope =
    Math.log(b.timeMin / a.timeMin) / (1 / kelvin(b.temperatureC) - 1 / kelvin(a.temperatureC));
  const step = 1 / kelvin(temperatureC) - 1 / kelvin(from.temperatureC);
  return Math.log(from.timeMin) + slope * step;
}
