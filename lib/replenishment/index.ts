export * from "./rates/index.ts";
export * from "./tank/index.ts";
export * from "./tuning/index.ts";
