export * from "./line/index.ts";
export * from "./rates/index.ts";
export * from "./silver/index.ts";
export * from "./tank/index.ts";
export * from "./tuning/index.ts";
export * from "./wash/index.ts";
