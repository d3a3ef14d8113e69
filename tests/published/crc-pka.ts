import { acidPk } from "wetside/solutions";
import { readSource } from "./run.ts";

export const computed = Object.fromEntries(
  readSource("crc-pka").checks.map(({ id }) => [id, () => acidPk(id, id === "boric" ? 20 : 25)]),
);
