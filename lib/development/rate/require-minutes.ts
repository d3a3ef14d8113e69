import { type NumberBounds, requireNumber } from "../../input/index.ts";
import { formatMinutes, parseMinutes } from "../../units/index.ts";

/** Lets a time in minutes in; to one written as on a clock, `"9:30"`, it says the number. */
export function requireMinutes(
  where: string,
  argument: string,
  value: unknown,
  bounds: NumberBounds = { above: 0 },
): number {
  const meant = minutesMeant(value);
  const hint = [meant, bounds.hint].filter((each) => each !== undefined).join("; ");
  return requireNumber(where, argument, value, {
    unit: "min",
    ...bounds,
    ...(hint === "" ? {} : { hint }),
  });
}

function minutesMeant(value: unknown): string | undefined {
  if (typeof value !== "string" || !/^\s*(?:\d+:)?\d+:\d\d\s*$/.test(value)) return undefined;
  const minutes = parseMinutes(value.trim());
  return `${formatMinutes(minutes)} is ${Number(minutes.toFixed(4))}, without quotation marks`;
}
