import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import type { MixingSheet } from "../../solutions/index.ts";
import { type Table, table } from "../parts/table.ts";

/**
 * The steps of a mixing sheet as a table, in the order of mixing.
 *
 * @param sheet any mixing sheet with at least one step: of a formula, a kit, a dilution, a fresh tank
 * @returns a table captioned with the sheet's title and volume; amounts to four figures
 * @throws InputError for a sheet without steps
 *
 * @example
 * mixingSheetTable(dilutionSheet({ title: "Fixer", ratio: "1+4", totalMl: 1000 })).caption // => "Fixer, makes 1 L"
 */
export function mixingSheetTable(sheet: MixingSheet): Table {
  requireObject("mixingSheetTable", "sheet", sheet, "an object with title, volumeMl, steps, …");
  if (sheet.steps.length === 0) {
    throw new InputError("mixingSheetTable", "sheet.steps", [], "write a sheet with steps");
  }
  const rows = sheet.steps.map(({ order, what, amount, unit, note }) => ({
    order,
    what,
    amount: `${Number(amount.toPrecision(amount >= 1000 ? 6 : 4))} ${unit}`,
    note,
  }));
  const { volumeMl } = sheet;
  const makes = volumeMl >= 1000 ? `${volumeMl / 1000} L` : `${volumeMl} mL`;
  return table(rows, {
    caption: `${sheet.title}, makes ${makes}`,
    columns: [
      { field: "order", heading: "Step" },
      { field: "what", heading: "What" },
      { field: "amount", heading: "How much", align: "right" },
      { field: "note", heading: "Mind" },
    ],
  });
}

/**
 * What the mixes of a day cost: one row for each sheet, and their sum. What one mix takes from another
 * (a fresh tank from its replenisher) is paid once: it comes off the sum.
 *
 * @param sheets priced mixing sheets, at least one, all in one currency
 * @returns a table of volume, cost and cost per litre, with what no price was found for
 * @throws InputError for a sheet that is not priced, or for two currencies
 *
 * @example
 * const sheet = priceMixingSheet(dilutionSheet({ title: "Fixer", ratio: "1+4", totalMl: 1000 }), { currency: "EUR", prices: [{ what: "concentrate", price: 8, amount: 1, unit: "L" }] })
 * mixingCostTable([sheet]).rows.at(-1).cost // => 1.6
 */
export function mixingCostTable(sheets: readonly MixingSheet[]): Table {
  const where = "mixingCostTable";
  requireEntries(where, "sheets", sheets);
  const rows = sheets.map(({ title, volumeMl, cost }) => {
    if (cost === null) {
      throw new InputError(where, "sheet", title, "price it first, with priceMixingSheet");
    }
    const { total, perLitre, unpriced, currency } = cost;
    const litres = volumeMl / 1000;
    return { title, litres, cost: total, perLitre, unpriced: unpriced.join(", "), currency };
  });
  const currencies = [...new Set(rows.map(({ currency }) => currency))];
  const [currency] = currencies;
  if (currency === undefined || currencies.length > 1) {
    const advice = "write priced sheets in one currency";
    throw new InputError(where, "sheets", currencies.join(", "), advice);
  }
  const within = takenFromEachOther(sheets);
  const none = { litres: null, perLitre: null, unpriced: "" };
  const less = { title: "Less what one mix takes from another", cost: -within, ...none };
  const total = rows.reduce((sum, row) => sum + row.cost, 0) - within;
  const last = [...(within > 0 ? [less] : []), { title: "Total", cost: total, ...none }];
  return table([...rows, ...last], {
    caption: "Cost of the mixes",
    columns: [
      { field: "title", heading: "Mix" },
      { field: "litres", heading: "Volume", unit: "L", digits: 1, align: "right" },
      { field: "cost", heading: "Cost", unit: currency, digits: 2, align: "right" },
      { field: "perLitre", heading: "Cost per litre", unit: currency, digits: 2, align: "right" },
      { field: "unpriced", heading: "Not priced" },
    ],
  });
}

/** Cost of what is poured from one of the mixes into another, and so stands in two rows. */
function takenFromEachOther(sheets: readonly MixingSheet[]): number {
  const plain = (text: string) => text.trim().toLowerCase();
  // A concentrate may bear the name of what is made of it; then the name is the concentrate's.
  const titles = sheets.map(({ title, steps }) =>
    steps.some(({ what }) => plain(what) === plain(title)) ? undefined : plain(title),
  );
  return sheets
    .flatMap(({ cost }, i) =>
      (cost?.lines ?? []).filter(({ what }) =>
        titles.some((title, j) => j !== i && title === plain(what)),
      ),
    )
    .reduce((sum, { cost }) => sum + cost, 0);
}
