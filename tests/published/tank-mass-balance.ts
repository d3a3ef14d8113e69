import { correctBath, tankSteadyState, tankStepResponse } from "wetside/replenishment";
import type { Computed } from "./run.ts";

const flows = { volumeL: 20, rateMlPerM2: 646.794 };
const bromide = { name: "bromide", replenisherGPerL: 0, releasedGPerM2: 0.8, startGPerL: 0 };
const agent = { name: "developing agent", replenisherGPerL: 5, consumedGPerM2: 1 };
const tank = { ...flows, components: [bromide] };
const AREA = 3;
const settled = tankSteadyState(tank, AREA);
const steady = settled.components[0]?.steadyGPerL ?? Number.NaN;

const after = ({ turnovers }: { readonly turnovers: readonly number[] }) =>
  tankStepResponse(
    tank,
    AREA,
    turnovers.map((n) => n * (settled.turnoverDays ?? Number.NaN)),
  ).map((moment) => moment.concentrationGPerL.bromide ?? Number.NaN);

export const computed: Computed = {
  "steady-bromide": () => steady,
  turnover: () => settled.turnoverM2 ?? Number.NaN,
  transient: after,
  "clean-carry-in": () =>
    tankSteadyState({ ...tank, carryInMlPerM2: 70.5 }, AREA).components[0]?.steadyGPerL ??
    Number.NaN,
  "developing-agent": () =>
    tankSteadyState({ ...flows, components: [agent] }, AREA).components[0]?.steadyGPerL ??
    Number.NaN,
  approach: (inputs) => after(inputs).map((value) => (100 * value) / steady),
  "remove-and-replace": ({ fractions }: { readonly fractions: readonly number[] }) =>
    fractions.map(
      (fraction) =>
        correctBath({ volumeL: 20, gPerL: { bromide: 1 } }, [
          {
            add: "water",
            litres: 20 * fraction,
            how: "dump first",
            times: Math.round(1 / fraction),
          },
        ]).keptShare,
    ),
};
