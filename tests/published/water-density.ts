import { waterDensityGPerMl } from "wetside/solutions";
import type { Computed } from "./run.ts";

const at = ({ temperaturesC }: { readonly temperaturesC: readonly number[] }) =>
  temperaturesC.map(waterDensityGPerMl);

export const computed: Computed = { fine: at, coarse: at };
