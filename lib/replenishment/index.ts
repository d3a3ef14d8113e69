export * from "./tuning/index.ts";
