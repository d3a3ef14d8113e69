import { matrixExponential } from "wetside/numerics";
import type { Computed } from "./run.ts";

const flat = ({ rows }: { readonly rows: readonly (readonly number[])[] }) =>
  matrixExponential(rows).flat();

export const computed: Computed = {
  "moler-van-loan": flat,
  nilpotent: flat,
  "two-tanks": flat,
};
