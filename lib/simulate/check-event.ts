import { InputError, requireNumber, requireOneOf } from "../input/index.ts";
import { requireKnownKeys } from "./known-keys.ts";
import { type SimulatedEvent, simulatedEventKinds } from "./simulated-event.ts";
import type { SimulatedLine } from "./simulated-line.ts";

const KEYS: Readonly<Record<SimulatedEvent["kind"], readonly string[]>> = {
  "fresh-bath": ["kind", "line", "day", "at"],
  "pump-setting": ["kind", "bath", "day", "settingMlPerStroke"],
  "counter-reset": ["kind", "bath", "day"],
  "cylinder-check": ["kind", "day"],
};

/** Lets events in whose line or pump exists and whose day and numbers are in range. */
export function checkedEvents(
  where: string,
  events: readonly SimulatedEvent[],
  lines: readonly SimulatedLine[],
  days: number,
): readonly SimulatedEvent[] {
  if (!Array.isArray(events)) {
    throw new InputError(where, "events", events, "write a list of events");
  }
  const ids = lines.map(({ id }) => id);
  const pumps = lines.flatMap(({ baths }) =>
    baths.filter(({ rateMlPerM2 }) => rateMlPerM2 !== undefined).map(({ id }) => id),
  );
  return events.map((event: SimulatedEvent, i) => {
    const at = `events[${i}]`;
    if (typeof event !== "object" || event === null) {
      throw new InputError(where, at, event, 'write { kind: "cylinder-check", day: 15 }');
    }
    requireOneOf(where, `${at}.kind`, event.kind, simulatedEventKinds);
    requireKnownKeys(where, at, event, KEYS[event.kind]);
    requireNumber(where, `${at}.day`, event.day, {
      min: 0,
      max: days - 1,
      whole: true,
      hint: "0 is the first day",
    });
    if (event.kind === "fresh-bath") {
      requireOneOf(where, `${at}.line`, event.line, ids);
      if (!/^\d\d:[0-5]\d$/.test(event.at) || event.at < "08:00" || event.at > "17:30") {
        const advice = 'write a clock time while the line works, 08:00 to 17:30, such as "11:30"';
        throw new InputError(where, `${at}.at`, event.at, advice);
      }
    } else if (event.kind !== "cylinder-check") {
      requireOneOf(where, `${at}.bath`, event.bath, pumps);
      if (event.kind === "pump-setting") {
        const bounds = { above: 0, max: 1000, unit: "mL" };
        requireNumber(where, `${at}.settingMlPerStroke`, event.settingMlPerStroke, bounds);
      }
    }
    return event;
  });
}
