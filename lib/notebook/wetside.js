#!/usr/bin/env node
// The command "wetside". In the repository it runs the sources, so that nothing depends on a
// stale build; in an installed package it runs what was built.
import { existsSync } from "node:fs";

// A reader who went away (a pipe to head) is no reason to stop half-way.
process.stdout.on("error", (error) => {
  if (error.code !== "EPIPE") throw error;
});

const sources = new URL("./cli.ts", import.meta.url);
if (existsSync(sources)) {
  const { register } = await import("tsx/esm/api");
  register();
  process.removeAllListeners("warning");
}
const cli = existsSync(sources) ? sources : new URL("../../dist/notebook/cli.js", import.meta.url);
const { main } = await import(cli.href);
process.exitCode = await main(process.argv.slice(2));
