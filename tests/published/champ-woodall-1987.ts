import {
  beyondThreeSigma,
  westernElectricZoneRules,
  type ZoneRule,
  zoneRulesRunLength,
} from "wetside/control";
import type { Computed } from "./run.ts";

const zone = (hits: number, window: number, sigmas: number): ZoneRule => {
  return { pattern: "beyond", hits, window, sigmas };
};

function at(rules: readonly ZoneRule[]) {
  return ({ shift }: { readonly shift: readonly number[] }) =>
    shift.map((each) => zoneRulesRunLength(rules, { shift: each }).zeroState);
}

export const computed: Computed = {
  C1: at([beyondThreeSigma]),
  C12: at([beyondThreeSigma, zone(2, 3, 2)]),
  C13: at([beyondThreeSigma, zone(4, 5, 1)]),
  C14: at([beyondThreeSigma, zone(8, 8, 0)]),
  "all-four": () => zoneRulesRunLength(westernElectricZoneRules).zeroState,
};
