export { type CarryOver, carryOvers, thiosulfateLimit } from "./carry-over.ts";
export { type MachineWash, type MachineWashResult, machineWash } from "./machine-wash.ts";
export { waterForLimit } from "./wash-water.ts";
