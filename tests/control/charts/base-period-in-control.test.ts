import { describe, expect, it } from "vitest";
import {
  type BasePeriodSearch,
  basePeriodInControl,
  colourPaperProcess,
  type Strip,
} from "wetside/control";
import { batches, frozen, morning, paperStrip } from "../example-strips.ts";

const specification = colourPaperProcess;
/** One strip on each of the first days of August 2026, off aim as given. */
const daily = (off: readonly number[]): readonly Strip[] =>
  frozen(off.map((ld, i) => paperStrip(morning(i + 1), ld)));
const find = (strips: readonly Strip[], search: BasePeriodSearch = {}) =>
  basePeriodInControl({ strips, batches, specification }, search);
const calm = daily(new Array(30).fill(0.01));

describe("the base period by default", () => {
  it("is the first days in control, as many as asked", () => {
    expect(find(calm)).toEqual({
      basePeriod: { from: "2026-08-01", to: "2026-08-21" },
      exclude: [],
      days: 21,
      strips: 21,
      reason: "21 strips on 21 days in control, 2026-08-01 to 2026-08-21",
    });
    expect(find(calm, { days: 25 }).basePeriod).toEqual({ from: "2026-08-01", to: "2026-08-25" });
    expect(find(calm, { from: "2026-08-05" }).basePeriod).toEqual({
      from: "2026-08-05",
      to: "2026-08-25",
    });
  });
  it("passes over days beyond an action limit and leaves them out", () => {
    const off = new Array(30).fill(0.01).map((ld, i) => (i === 4 ? 0.09 : i === 9 ? 0.3 : ld));
    const found = find(daily(off));
    expect(found.basePeriod).toEqual({ from: "2026-08-01", to: "2026-08-23" });
    expect(found.exclude).toEqual(["2026-08-05", "2026-08-10"]);
    expect(found.reason).toMatch(/; not in control and left out: 2026-08-05, 2026-08-10$/);
  });
  it("takes a day on its action limit as in control", () => {
    const off = new Array(30).fill(0.01).map((ld, i) => (i === 4 ? 0.08 : ld));
    expect(find(daily(off)).exclude).toEqual([]);
  });
  it("does not begin or end on a day out of control", () => {
    const off = [0.3, ...new Array(22).fill(0.01), 0.3, 0.3];
    const found = find(daily(off), { days: 22 });
    expect([found.basePeriod, found.exclude]).toEqual([
      { from: "2026-08-02", to: "2026-08-23" },
      [],
    ]);
  });
  it("never counts the day of the latest strip", () => {
    expect(find(calm.slice(0, 20)).basePeriod).toBeNull();
    expect(find(calm.slice(0, 21)).basePeriod).toEqual({ from: "2026-08-01", to: "2026-08-20" });
    const asOf = { strips: calm, batches, specification, asOf: morning(20, "12:00") };
    expect(basePeriodInControl(asOf).basePeriod).toBeNull();
  });
  it("says what is missing where there are too few strips, none, or no process", () => {
    expect(find(calm.slice(0, 4)).reason).toBe(
      "3 strips on 3 days in control before the latest strip's day; at least 20 are needed, so 17 more",
    );
    expect(find(calm, { from: "2026-08-20" }).reason).toMatch(/^10 strips .* from 2026-08-20 on/);
    expect(find([]).reason).toMatch(/^0 strips on 0 days/);
    expect(find(daily(new Array(30).fill(0.3))).basePeriod).toBeNull();
  });
  it("keeps what was excluded by hand and does not count it", () => {
    const found = find(calm, { exclude: ["2026-08-03"] });
    expect(found.basePeriod).toEqual({ from: "2026-08-01", to: "2026-08-22" });
    expect([found.exclude, found.strips]).toEqual([["2026-08-03"], 21]);
    const bad = new Array(30).fill(0.01).map((ld, i) => (i === 2 ? 0.3 : ld));
    expect(find(daily(bad), { exclude: ["2026-08-03T07:10"] }).exclude).toEqual([
      "2026-08-03T07:10",
    ]);
  });
  it("turns back what cannot be meant", () => {
    for (const days of [0, -3, 2.5, Number.NaN]) expect(() => find(calm, { days })).toThrow(/days/);
    expect(() => find(calm, { from: "17 May" })).toThrow(/from is "17 May".*local date/);
    expect(() => find([], { exclude: ["9 June"] })).toThrow(/exclude\[0\] is "9 June"/);
    expect(() => find(calm, { minimumReadings: 1 })).toThrow(/minimumReadings/);
  });
});
