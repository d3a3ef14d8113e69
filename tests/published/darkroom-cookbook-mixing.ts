import { acidToStrength, bathCapacity, blendByMass } from "wetside/solutions";
import type { Computed } from "./run.ts";

interface Inputs {
  readonly strongPercent: number;
  readonly targetPercent: number;
  readonly parts: readonly [number, number];
  readonly massParts: readonly (readonly [number, number])[];
  readonly capacities: readonly string[];
}

const byVolume = ({ strongPercent, parts: [acid, water] }: Inputs) =>
  blendByMass({
    substance: "acetic acid",
    portions: [
      { massPercent: strongPercent, volumeMl: acid },
      { massPercent: 0, volumeMl: water },
    ],
  });

const rolls = ({ capacities }: Inputs) =>
  capacities.map((capacity) => {
    const next = [{ format: "120", count: 1 }];
    return bathCapacity({ volumeMl: 1000, capacity, next }).leftByFormat[0]?.count ?? 0;
  });

export const computed: Computed = {
  "three-to-eight": ({ strongPercent, targetPercent }: Inputs) =>
    acidToStrength({ substance: "acetic acid", strongPercent, targetPercent, totalMl: 1000 })
      .volumeRule,
  "strength-of-rule": (inputs: Inputs) => byVolume(inputs).massPercent,
  "mass-table": ({ strongPercent, massParts }: Inputs) =>
    massParts.map(
      ([acid, water]) =>
        blendByMass({
          substance: "acetic acid",
          portions: [
            { massPercent: strongPercent, massG: acid },
            { massPercent: 0, massG: water },
          ],
        }).massPercent,
    ),
  contraction: (inputs: Inputs) => {
    const { contractionMl, portionsMl } = byVolume(inputs);
    return (contractionMl / portionsMl) * 100;
  },
  "fixer-rolls": rolls,
  "stop-rolls": (inputs: Inputs) => rolls(inputs)[0] ?? 0,
};
