import * as dfd from "danfojs";
import { describe, expect, it } from "vitest";
import { DISPLAY, displayBundle } from "../../lib/notebook/display.ts";

describe("the display of a value", () => {
  it("shows nothing for undefined and text for anything plain", () => {
    expect(displayBundle(undefined)).toBeUndefined();
    expect(displayBundle(null)).toEqual({ "text/plain": "null" });
    expect(displayBundle(2 / 3)).toEqual({ "text/plain": "0.666666666667" });
  });
  it("asks the value itself first, and waits if it takes its time", async () => {
    expect(displayBundle({ [DISPLAY]: () => ({ "text/html": "<b>x</b>" }) })).toEqual({
      "text/html": "<b>x</b>",
    });
    const later = displayBundle({ [DISPLAY]: async () => ({ "text/plain": "later" }) });
    expect(await later).toEqual({ "text/plain": "later" });
    expect(displayBundle({ [DISPLAY]: () => ({}) })).toBeUndefined();
  });
  it("refuses a display method that gives no object", () => {
    expect(() => displayBundle({ [DISPLAY]: () => "text" })).toThrow(/must return an object/);
  });
  it("knows a figure that lost its display method on the way", () => {
    const figure = {
      kind: "vega-lite",
      title: "T",
      description: "D",
      specification: { mark: "bar" },
    };
    expect(displayBundle(JSON.parse(JSON.stringify(figure)))).toEqual({
      "application/vnd.vegalite.v5+json": { mark: "bar" },
      "text/plain": "T\nD",
    });
    const plot = { kind: "plotly", title: "T", description: "D", data: [], layout: {} };
    expect(displayBundle(plot)).toEqual({
      "application/vnd.plotly.v1+json": { data: [], layout: {} },
      "text/plain": "T\nD",
    });
    expect(displayBundle({ kind: "vega-lite" })).toEqual({ "text/plain": '{ kind: "vega-lite" }' });
  });
  it("shows a data frame as an HTML table and as text, escaped", () => {
    const frame = new dfd.DataFrame([
      { bath: "<dev>", c: 0.1 + 0.2 },
      { bath: "fix", c: null },
    ]);
    const bundle = displayBundle(frame) as Record<string, string>;
    expect(bundle["text/html"]).toContain("&lt;dev&gt;");
    expect(bundle["text/html"]).toContain('<td style="text-align:right">0.3</td>');
    expect(bundle["text/plain"]).toBe("   bath     c\n0  <dev>  0.3\n1  fix      –");
  });
  it("shows both ends of a long frame and how long it is", () => {
    const frame = new dfd.DataFrame(Array.from({ length: 1000 }, (_, i) => ({ i })));
    const text = (displayBundle(frame) as Record<string, string>)["text/plain"] ?? "";
    expect(text).toContain("1000 rows");
    expect(text).toContain("999");
    expect(text.split("\n").length).toBeLessThan(70);
  });
  it("shows a series as one column", () => {
    const series = new dfd.Series([1, 2], { columns: ["days"] });
    expect((displayBundle(series) as Record<string, string>)["text/plain"]).toBe(
      "   days\n0     1\n1     2",
    );
  });
});
