import { autocorrelation } from "wetside/control";
import type { Computed } from "./run.ts";

type Data = { readonly x: readonly number[] };
const of = ({ x }: Data, lags: number) => autocorrelation(x, { lags });

export const computed: Computed = {
  "lew-lag-1": (data: Data) => of(data, 1).lags[0]?.correlation ?? Number.NaN,
  "lew-lags": (data: Data) => of(data, 10).lags.map(({ correlation }) => correlation),
  "lew-ljung-box": (data: Data) => of(data, 10).ljungBox.statistic,
  "flow-ljung-box-p": (data: Data) => of(data, 3).ljungBox.probability,
};
