import { type FaultTable, faultById } from "wetside/control";

/** Which way a table's signature of a fault moves a parameter: "+", "-", or "both ways". */
export function faultDirection(table: FaultTable) {
  return ({ fault, parameter }: { readonly fault: string; readonly parameter: string }): string => {
    const pattern = table.patterns[faultById(table, fault).pattern];
    const values = Object.values(pattern?.shape[parameter] ?? {});
    if (values.length > 0 && values.every((v) => v > 0)) return "+";
    if (values.length > 0 && values.every((v) => v < 0)) return "-";
    return "both ways";
  };
}
