import { describe, expect, it } from "vitest";
import {
  aimsOfBatch,
  colourNegativeProcess,
  crossover,
  deviationsFromAim,
  processVerdict,
  type Strip,
  seriesOfStrips,
} from "../../../lib/control/index.ts";
import { InputError } from "../../../lib/input/index.ts";

const grey = (density: number) => ({ red: density, green: density, blue: density });
const reference = Object.fromEntries(
  Object.keys(colourNegativeProcess.patches).map((patch, i) => [patch, grey(0.3 + 0.4 * i)]),
);
const batch = { id: "4117", process: "colour-negative", reference, correction: {} };
const strip: Strip = {
  takenAt: "2026-08-14T07:10",
  process: "colour-negative",
  stripBatch: "4117",
  operator: "A",
  patches: reference,
};
const history = { strips: [strip], batches: [batch], specification: colourNegativeProcess };

/** The specification with one thing in its first parameter changed. */
function withFirst(change: object) {
  const [first, ...rest] = colourNegativeProcess.parameters;
  return { ...colourNegativeProcess, parameters: [{ ...first, ...change }, ...rest] } as never;
}

describe("strips at the door", () => {
  it("refuse a limit that is no number, which no deviation would ever pass", () => {
    const limits = colourNegativeProcess.parameters[0]?.limits;
    for (const upper of [Number.NaN, Number.POSITIVE_INFINITY, "0.05", undefined]) {
      const broken = withFirst({ limits: { ...limits, control: { ...limits?.control, upper } } });
      for (const judge of [processVerdict, seriesOfStrips]) {
        expect(() => judge({ ...history, specification: broken })).toThrow(
          "specification.parameters[0].limits.control.upper",
        );
      }
    }
  });
  it("refuse a specification without its parameters, colours or limits", () => {
    for (const specification of [undefined, {}, { parameters: [7] }]) {
      expect(() => processVerdict({ ...history, specification } as never)).toThrow(InputError);
    }
    for (const change of [{ colours: undefined }, { colours: ["grey"] }, { limits: null }]) {
      expect(() => processVerdict({ ...history, specification: withFirst(change) })).toThrow(
        InputError,
      );
    }
  });
  it("refuse a reading that is null instead of taking it for 0", () => {
    const patches = { ...reference, ld: { ...grey(0.7), red: null } } as never;
    const strips = [{ ...strip, patches }];
    expect(() => processVerdict({ ...history, strips })).toThrow("ld.red is null");
  });
  it("refuse a strip without readings and a batch number that is no text", () => {
    const without = [{ ...strip, patches: undefined as never }];
    expect(() => processVerdict({ ...history, strips: without })).toThrow("strips[0].patches");
    const number = [{ ...strip, stripBatch: 4117 as never }];
    expect(() => processVerdict({ ...history, strips: number })).toThrow("register the batch");
    expect(() => processVerdict({ ...history, batches: undefined as never })).toThrow("batches");
  });
  it("refuse aims that are no densities", () => {
    const aims = aimsOfBatch(batch);
    for (const red of [Number.NaN, Number.POSITIVE_INFINITY, "0.3", undefined, 1e300]) {
      const broken = { ...aims, patches: { ...aims.patches, ld: { ...grey(0.3), red } } } as never;
      expect(() => deviationsFromAim(strip, broken, colourNegativeProcess)).toThrow("ld.red");
      const pair = { old: strip, new: { ...strip, stripBatch: "4203" } };
      expect(() => crossover(broken, [pair])).toThrow("ld.red");
    }
    expect(() => crossover(aims, [undefined as never])).toThrow(InputError);
    expect(() => crossover(aims, [{ old: strip } as never])).toThrow(InputError);
  });
});
