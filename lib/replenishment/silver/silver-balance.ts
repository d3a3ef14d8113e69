import { type RelaxedState, relax } from "../tank/relaxation.ts";

/** Silver in the tank after a day, and what the cell plated. */
export interface PlatedDay {
  readonly concentration: number;
  readonly integral: number;
  readonly platedGPerL: number;
}

/**
 * One day with a cell that plates `plating` g/L a day while the silver stands above `floor`, then only
 * what comes in beyond it. Solved exactly: above the floor the balance is that of c − floor.
 */
export function platedDay(
  balance: { readonly source: number; readonly rate: number },
  start: number,
  plating: number,
  floor: number,
): PlatedDay {
  const { source, rate } = balance;
  if (plating === 0) return plain(relax(balance, start, 1), 0);
  if (start >= floor) return aboveFloor(balance, start, plating, floor, 1);
  const waits = timeToRise(source, rate, start, floor);
  if (waits >= 1) return plain(relax(balance, start, 1), 0);
  const before = relax(balance, start, waits);
  const after = aboveFloor(balance, floor, plating, floor, 1 - waits);
  return { ...after, integral: before.integral + after.integral };
}

function aboveFloor(
  { source, rate }: { readonly source: number; readonly rate: number },
  start: number,
  plating: number,
  floor: number,
  days: number,
): PlatedDay {
  const comes = source - rate * floor;
  const state = relax({ source: comes - plating, rate }, start - floor, days);
  // At the floor the cell plates what comes in beyond it. If less comes than leaves by itself, the
  // silver sinks below the floor without the cell.
  const held = state.usedUpDays;
  if (held === 0 || comes >= 0) {
    const plated = plating * (days - held) + Math.max(0, comes) * held;
    return {
      concentration: floor + state.concentration,
      integral: floor * days + state.integral,
      platedGPerL: plated,
    };
  }
  const sinking = relax({ source, rate }, floor, held);
  return {
    concentration: sinking.concentration,
    integral: floor * (days - held) + state.integral + sinking.integral,
    platedGPerL: plating * (days - held),
  };
}

function plain(state: RelaxedState, platedGPerL: number): PlatedDay {
  return { concentration: state.concentration, integral: state.integral, platedGPerL };
}

/** Days until a rising concentration reaches the floor; infinite if it never does. */
function timeToRise(source: number, rate: number, start: number, floor: number): number {
  const slope = source - rate * start;
  if (slope <= 0) return Number.POSITIVE_INFINITY;
  const steady = (floor - start) / slope;
  // A rise too small for a quotient is none.
  if (!Number.isFinite(steady)) return Number.POSITIVE_INFINITY;
  const share = rate * steady;
  if (share >= 1) return Number.POSITIVE_INFINITY;
  return share === 0 ? steady : (steady * -Math.log1p(-share)) / share;
}
