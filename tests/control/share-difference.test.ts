import { describe, expect, it } from "vitest";
import { shareDifference } from "wetside/control";
import { seededRandom } from "wetside/numerics";

describe("shareDifference", () => {
  const days = (seed: number, share: number, count: number) => {
    const { uniform } = seededRandom(seed);
    const sizes = Array.from({ length: count }, () => 400);
    const counts = sizes.map((size) => {
      let faults = 0;
      for (let i = 0; i < size; i++) if (uniform() < share) faults++;
      return faults;
    });
    return { counts, sizes };
  };
  it("is 0 for equal periods, and not plain", () => {
    const period = { counts: [4, 6], sizes: [100, 100] };
    const same = shareDifference(period, period);
    expect(same.difference).toBe(0);
    expect(same.plain).toBe(false);
  });
  it("turns its sign when the periods change places", () => {
    const [a, b] = [days(1, 0.03, 20), days(2, 0.06, 12)];
    const there = shareDifference(a, b);
    const back = shareDifference(b, a);
    expect(back.difference).toBe(-there.difference);
    expect(there.plain).toBe(true);
  });
  it("holds the true difference about as often as it says", () => {
    const rounds = 200;
    let held = 0;
    for (let seed = 0; seed < rounds; seed++) {
      const { interval } = shareDifference(days(seed, 0.04, 20), days(9000 + seed, 0.05, 12));
      if (interval[0] <= 0.01 && interval[1] >= 0.01) held++;
    }
    const fourErrors = 4 * Math.sqrt((0.05 * 0.95) / rounds);
    expect(Math.abs(held / rounds - 0.95)).toBeLessThan(fourErrors);
  });
  it("refuses one day, and more remakes than prints", () => {
    const good = { counts: [1, 2], sizes: [10, 10] };
    expect(() => shareDifference({ counts: [1], sizes: [10] }, good)).toThrow();
    expect(() => shareDifference({ counts: [11, 1], sizes: [10, 10] }, good)).toThrow(/remakes/);
  });
  it("gives an interval of no width where no day has any fault", () => {
    const none = { counts: [0, 0], sizes: [10, 10] };
    expect(shareDifference(none, none).interval).toEqual([0, 0]);
  });
});
