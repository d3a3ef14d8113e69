import type { Densities } from "../control/index.ts";
import { tankSteadyState } from "../replenishment/index.ts";
import { faultKindOf, requireFaultSize } from "./check-fault.ts";
import { densityResponseOf } from "./density-response.ts";
import { developerAims, developerTank } from "./developer-tank.ts";
import { faultsOfLine } from "./faults-of-line.ts";
import type { CheckedFault } from "./simulated-fault.ts";
import { type SimulatedBath, simulatedLines } from "./simulated-line.ts";
import { stripCauses } from "./strip-causes.ts";
import { effectOnPatches } from "./strip-densities.ts";
import { densities } from "./three-densities.ts";

/**
 * What a fault of the simulated lab does to each patch once it shows in full, without noise: at once
 * for most, at steady state for the rate of replenishment.
 *
 * @param process `"colour-negative"` or `"colour-paper"`
 * @param kind id of one of `simulatedFaultKinds`
 * @param size see the kind's `sizeMeans`; default its typical size
 * @returns density deviations by patch
 * @throws InputError for an unknown process or kind, or a size out of range
 *
 * @example
 * simulatedFaultEffect("colour-negative", "densitometer-at-fault", 0.05).ld // => { red: 0.05, green: 0.05, blue: 0.05 }
 */
export function simulatedFaultEffect(
  process: string,
  kind: string,
  size?: number,
): Readonly<Record<string, Densities>> {
  const where = "simulatedFaultEffect";
  const answers = densityResponseOf(where, process);
  const line = simulatedLines.find((each) => each.process === process);
  const id = line?.id ?? "";
  const known = faultKindOf(where, kind);
  const fault = {
    kind: known.id,
    line: id,
    fromDay: 0,
    untilDay: 1,
    size: requireFaultSize(where, known, size ?? known.typicalSize),
  };
  const faults = faultsOfLine(id, [fault]);
  const [bath] = line?.baths ?? [];
  const causes = stripCauses({
    developer: bath === undefined ? {} : settledDeveloper(bath, fault),
    offsetC: faults.heaterErrorC(0),
    timeFactor: faults.timeFactor(0),
    standing: faults.standing(0),
    mishandled: faults.mishandled(0),
  });
  const effects = Object.entries(
    effectOnPatches(Object.keys(line?.reference ?? {}), answers, causes),
  );
  return Object.fromEntries(effects.map(([patch, three]) => [patch, densities(three)]));
}

function settledDeveloper(bath: SimulatedBath, { kind, size }: CheckedFault) {
  const aim = Object.fromEntries(developerAims.map(({ name, aimGPerL }) => [name, aimGPerL]));
  switch (kind) {
    case "developer-too-strong":
    case "developer-too-weak": {
      const by = kind === "developer-too-strong" ? 1 + size : 1 - size;
      return Object.fromEntries(Object.entries(aim).map(([name, value]) => [name, value * by]));
    }
    case "developer-oxidised":
      return { ...aim, "developing agent": (aim["developing agent"] ?? 0) * (1 - size) };
    case "contaminated-with-fixer":
      return { ...aim, fixer: size };
    case "contaminated-with-bleach":
      return { ...aim, bleach: size };
    case "over-replenished":
    case "under-replenished": {
      const by = kind === "over-replenished" ? 1 + size : 1 - size;
      const tank = developerTank(bath, { mixStrength: 1, agentLossPerDay: 0 });
      const rateMlPerM2 = tank.rateMlPerM2 * by;
      const { components } = tankSteadyState({ ...tank, rateMlPerM2 }, 1);
      return Object.fromEntries(
        components.map(({ name, steadyGPerL }) => [name, steadyGPerL ?? 0]),
      );
    }
    default:
      return aim;
  }
}
