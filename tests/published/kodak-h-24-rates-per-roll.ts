import { publishedRates, rateTable } from "wetside/replenishment";
import { convertLength } from "wetside/units";
import type { Computed } from "./run.ts";

const metres = convertLength(100, "ft", "m");
const per100ft = (id: string, format: string) => {
  const mlPerM2 = publishedRates.find((rate) => rate.id === id)?.mlPerM2 ?? Number.NaN;
  return metres * (rateTable({ mlPerM2, formats: [format] }).formats[0]?.mlEach ?? Number.NaN);
};

export const computed: Computed = {
  "per-100ft": ({ ids }: { readonly ids: readonly string[] }) =>
    ids.map((id) => per100ft(id, "35mm-metre")),
  "16mm": ({ id }: { readonly id: string }) => per100ft(id, "16mm-metre"),
};
