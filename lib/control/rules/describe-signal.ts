import { strictlyBeyond } from "../charts/on-the-line.ts";
import type { Readings } from "../charts/readings.ts";
import type { RunRuleSettings } from "./run-rule-options.ts";
import type { RunRuleId, RunRuleSignal } from "./run-rule-signal.ts";

interface Scale {
  readonly centre: number;
  readonly sigma: number;
}

/** Puts one marked reading into words, with the readings that led to it. */
export function describeSignal(
  rule: RunRuleId,
  at: number,
  values: Readings,
  scale: Scale,
  settings: RunRuleSettings,
  runStart: number,
): RunRuleSignal {
  const z = (i: number) => ((values[i] ?? 0) - scale.centre) / scale.sigma;
  const last = (count: number) =>
    Array.from({ length: count }, (_, j) => at - count + 1 + j).filter((i) => i >= runStart);
  const sideOf = (i: number) => (z(i) > 0 ? "above" : "below");
  const told = (
    rows: readonly number[],
    side: RunRuleSignal["side"],
    sentence: string,
  ): RunRuleSignal => ({ rule, at, rows, side, sentence: `${sentence} (${label(rule)})` });

  switch (rule) {
    case "nelson-1":
    case "western-electric-1": {
      const side = sideOf(at);
      return told([at], side, `1 reading more than 3 sigma ${side} the centre line`);
    }
    case "nelson-2":
    case "western-electric-4": {
      const count = rule === "nelson-2" ? settings.oneSideNelson : settings.oneSideWesternElectric;
      const side = sideOf(at);
      return told(last(count), side, `${count} readings in a row ${side} the centre line`);
    }
    case "nelson-3": {
      const rising = (values[at] ?? 0) > (values[at - 1] ?? 0);
      const sentence = `${settings.trend} readings in a row steadily ${rising ? "rising" : "falling"}`;
      return told(last(settings.trend), rising ? "above" : "below", sentence);
    }
    case "nelson-4":
      return told(
        last(settings.alternating),
        "both",
        `${settings.alternating} readings in a row going up and down by turns`,
      );
    case "nelson-5":
    case "western-electric-2":
      return zoneSignal(2, 2, 3);
    case "nelson-6":
    case "western-electric-3":
      return zoneSignal(1, 4, 5);
    case "nelson-7":
      return told(
        last(settings.inside),
        "both",
        `${settings.inside} readings in a row within 1 sigma of the centre line`,
      );
    case "nelson-8":
      return told(
        last(settings.outside),
        last(settings.outside).every((i) => sideOf(i) === sideOf(at)) ? sideOf(at) : "both",
        `${settings.outside} readings in a row more than 1 sigma from the centre line`,
      );
  }

  function zoneSignal(zone: number, needed: number, window: number): RunRuleSignal {
    const far = last(window).filter((i) => strictlyBeyond(Math.abs(z(i)), zone));
    const above = far.filter((i) => z(i) > 0);
    const side = above.length >= needed ? "above" : "below";
    const rows = side === "above" ? above : far.filter((i) => z(i) < 0);
    const sentence = `${rows.length} of ${window} readings in a row more than ${zone} sigma ${side} the centre line`;
    return told(rows, side, sentence);
  }
}

function label(rule: RunRuleId): string {
  const number = rule.slice(rule.lastIndexOf("-") + 1);
  return rule.startsWith("nelson") ? `Nelson test ${number}` : `Western Electric rule ${number}`;
}
