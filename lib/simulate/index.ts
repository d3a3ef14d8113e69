export {
  type DensityAnswer,
  type DensityCause,
  densityResponses,
  type ThreeDensities,
} from "./density-response.ts";
export { simulatedFaultEffect } from "./fault-effect.ts";
export { randomFault } from "./random-fault.ts";
export { revealFaults } from "./reveal-faults.ts";
export { simulateLab } from "./simulate-lab.ts";
export type { SimulatedBatch } from "./simulated-batch.ts";
export type { SimulatedEvent } from "./simulated-event.ts";
export {
  type SimulatedFault,
  type SimulatedFaultKind,
  simulatedFaultIds,
  simulatedFaultKinds,
} from "./simulated-fault.ts";
export type { RevealedFault, SimulatedLab, SimulateLabOptions } from "./simulated-lab.ts";
export {
  type SimulatedBath,
  type SimulatedHeater,
  type SimulatedLine,
  simulatedLines,
} from "./simulated-line.ts";
export type { StripNoise } from "./strip-densities.ts";
