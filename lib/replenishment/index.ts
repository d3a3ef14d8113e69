export * from "./tank/index.ts";
export * from "./tuning/index.ts";
