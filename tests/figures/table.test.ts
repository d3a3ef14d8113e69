import { describe, expect, it } from "vitest";
import { table } from "../../lib/figures/parts/table.ts";

const rows = [
  { bath: "developer <1>", temperatureC: 37.8, change: -0.04 },
  { bath: "fixer", temperatureC: 38, change: 0.1 },
  { bath: "rinse", temperatureC: undefined, change: 0 },
];
const columns = [
  { field: "bath", heading: "Bath" },
  { field: "temperatureC", heading: "Temperature", unit: "°C", digits: 1 },
  { field: "change", heading: "Change", unit: "°C", digits: 2, signed: true },
];

function shown(value: object): Record<string, string> {
  const show: unknown = Reflect.get(value, Symbol.for("Jupyter.display"));
  if (typeof show !== "function") throw new Error("no display method");
  return show.call(value) as Record<string, string>;
}

describe("table", () => {
  it("prints aligned plain text with units in the heading, signs, and a dash for what is missing", () => {
    expect(shown(table(rows, { columns, caption: "Baths today" }))["text/plain"]).toBe(
      [
        "Baths today",
        "",
        "Bath           Temperature (°C)  Change (°C)",
        "-------------  ----------------  -----------",
        "developer <1>              37.8        −0.04",
        "fixer                      38.0        +0.10",
        "rinse                         –         0.00",
      ].join("\n"),
    );
  });

  it("escapes every text in the HTML and gives it a caption and scopes", () => {
    const html = shown(table(rows, { columns, caption: "Baths & <today>" }))["text/html"] ?? "";
    expect(html).toContain("<caption>Baths &amp; &lt;today&gt;</caption>");
    expect(html).toContain("developer &lt;1&gt;");
    expect(html).toContain('<th scope="col" style="text-align:right">Temperature (°C)</th>');
    expect(html).toContain('<th scope="row"');
    expect(html).not.toContain("<1>");
  });

  it("breaks no line between a number and its unit in the HTML, and leaves other words alone", () => {
    const texts = ["1+1, 580 mL, 22.5 °C", "00:11:58 +1", "2 steps", "12 months", "9 % of 3 g"];
    const columns = [{ field: "text", heading: "Text" }];
    const own = table(
      texts.map((text) => ({ text })),
      { columns, caption: "Words" },
    );
    const html = shown(own)["text/html"] ?? "";
    for (const text of [
      "1+1, 580\u00a0mL, 22.5\u00a0°C",
      "00:11:58\u00a0+1",
      "2 steps",
      "12 months",
      "9\u00a0% of 3\u00a0g",
    ]) {
      expect(html).toContain(`>${text}<`);
    }
    expect(shown(own)["text/plain"]).toContain("22.5 °C");
  });

  it("refuses a missing caption, no columns, and a field that no row has", () => {
    expect(() => table(rows, { columns, caption: "" })).toThrow(/caption/);
    expect(() => table(rows, { columns: [], caption: "Baths" })).toThrow(/at least one column/);
    const wrong = [{ field: "temp", heading: "Temperature" }];
    expect(() => table(rows, { columns: wrong, caption: "Baths" })).toThrow(
      /bath, temperatureC, change/,
    );
  });

  it("shows a table without rows, and a single cell", () => {
    expect(shown(table([], { columns, caption: "Nothing yet" }))["text/plain"]).toContain("Bath");
    const one = table([{ a: true }], { columns: [{ field: "a", heading: "A" }], caption: "One" });
    expect(shown(one)["text/plain"]).toBe("One\n\nA\n---\nyes");
  });

  it("shows a sentence in the place of a table without rows, and notes below", () => {
    const columns = [{ field: "bath", heading: "Bath" }];
    const shown = (value: object) =>
      (value as Record<symbol, () => Record<string, string>>)[Symbol.for("Jupyter.display")]?.();
    const empty = table([], { caption: "Baths", columns, ifEmpty: "No <bath>.", notes: ["So?"] });
    expect(shown(empty)?.["text/html"]).toBe("<p>No &lt;bath&gt;.</p>\n<p>So?</p>");
    expect(shown(empty)?.["text/plain"]).toBe("No <bath>.\n\nSo?");
    const full = table([{ bath: "a" }], { caption: "Baths", columns, ifEmpty: "No bath." });
    expect(shown(full)?.["text/plain"]).not.toContain("No bath.");
  });
});
