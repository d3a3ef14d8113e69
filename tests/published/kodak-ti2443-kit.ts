import { kitSheet } from "wetside/solutions";
import type { Computed } from "./run.ts";

interface Inputs {
  readonly mlPerL: number;
  readonly volumesMl: readonly number[];
}

const sheets = ({ mlPerL, volumesMl }: Inputs) =>
  volumesMl.map((volumeMl) =>
    kitSheet({ title: "kit", parts: [{ what: "part", mlPerL }], volumeMl }),
  );

const amounts = (inputs: Inputs) =>
  sheets(inputs).map(({ steps }) => steps.find(({ what }) => what === "part")?.amount ?? 0);

export const computed: Computed = {
  "first-developer": amounts,
  "reversal-bath": amounts,
  "colour-developer-B": amounts,
  bleach: amounts,
  "starting-water": (inputs: Inputs) =>
    sheets(inputs).map(({ steps, volumeMl }) => (steps[0]?.amount ?? 0) / volumeMl)[0] ?? 0,
};
