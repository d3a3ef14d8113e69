import { describe, expect, it } from "vitest";
import { autocorrelation, rankFaults } from "wetside/control";
import {
  autocorrelationFigure,
  faultEvidenceFigure,
  faultProbabilityFigure,
} from "wetside/figures";
import { strip, window } from "../control/faults/window.ts";
import { drawn } from "./drawn.ts";

const low = strip(-0.008, -0.12, -0.08);
const ranking = rankFaults(window([strip(0, 0, 0), low, low, low]));

describe("figures of fault finding", () => {
  it("set what was read beside what the first two faults foretell", async () => {
    const figure = faultEvidenceFigure(ranking);
    const { svg, warnings } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).toContain(">HD − LD, blue<");
    expect(figure.description).toContain("this fault foretells");
    expect(svg).toContain("like it)");
  });
  it("keep readings in the order in which strips are read", async () => {
    const { svg } = await drawn(faultEvidenceFigure(ranking));
    const at = (text: string) => svg.indexOf(`>${text}<`);
    expect(at("D-min, red")).toBeLessThan(at("LD, red"));
    expect(at("LD, red")).toBeLessThan(at("LD, blue"));
  });
  it("show every probability, the rest summed", async () => {
    const figure = faultProbabilityFigure(ranking, { faults: 3 });
    const { svg, warnings } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).toContain("nothing wrong");
    expect(svg).toContain("other faults");
    expect(() => faultProbabilityFigure(ranking, { faults: 0 })).toThrow(/at least 1/);
  });
  it("call no cause quite certain and none quite out of the question", () => {
    const [first, ...others] = ranking.faults;
    if (first === undefined) throw new Error("a ranking has faults");
    const sure = { ...first, probability: 0.9996 };
    const { description } = faultProbabilityFigure({
      ...ranking,
      faults: [sure, ...others.map((each) => ({ ...each, probability: 0.0004 }))],
    });
    expect(description).toContain(`${first.name} > 99.9 %`);
    expect(description).toContain("< 0.1 %");
    expect(description).not.toContain("100.0 %");
  });
  it("refuse a ranking without evidence", () => {
    expect(() => faultEvidenceFigure({ ...ranking, evidence: [] })).toThrow(/rankFaults/);
  });
  it("show correlation lag by lag with its band", async () => {
    const wave = Array.from({ length: 60 }, (_, i) => Math.sin(i / 3));
    const figure = autocorrelationFigure(autocorrelation(wave));
    const { svg, warnings } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).toContain("Lag (readings)");
    expect(figure.description).toContain("lag 1 0.9");
  });
});
