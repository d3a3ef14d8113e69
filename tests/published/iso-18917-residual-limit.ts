import { washRules } from "wetside";
import type { Computed } from "./run.ts";

export const computed: Computed = {
  // 1 g/m² is 100 µg/cm².
  limit: () => washRules.thiosulfateLimit.gPerM2 * 100,
};
