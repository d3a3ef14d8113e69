import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { controlChartSvg } from "../../docs/images/make.ts";

it("the README's control chart is what the demo lab's logs give today (else run docs/images/make.ts)", async () => {
  const kept = readFileSync(
    new URL("../../docs/images/control-chart.svg", import.meta.url),
    "utf8",
  );
  expect(await controlChartSvg()).toBe(kept);
});
