import { describe, expect, it } from "vitest";
import { agitationMarks, developingTank, packBatches } from "../../../lib/development/index.ts";
import { InputError } from "../../../lib/input/index.ts";

describe("a slip of the pen", () => {
  it("is refused instead of listing the agitation of years", () => {
    expect(() => agitationMarks("30 s, then 5 s a minute", 86_401)).toThrow("at most 86400");
    expect(agitationMarks("30 s, then 5 s a minute", 86_400).length).toBe(1440);
  });
  it("is refused instead of packing more films than there are", () => {
    const tank = developingTank("plastic, 2 reels");
    const spiral = tank.spirals[0];
    const kind = { spiral, leastMl: 0, films: 10_001 } as never;
    expect(() => packBatches([kind], tank)).toThrow("kinds[0].films");
    const broken = { spiral: { ...spiral, heightMm: Number.NaN }, leastMl: 0, films: 2 } as never;
    expect(() => packBatches([broken], tank)).toThrow("kinds[0].spiral.heightMm");
    const one = { spiral, leastMl: 0, films: 2 } as never;
    expect(() => packBatches([one], { ...tank, fullMl: Number.NaN })).toThrow(InputError);
  });
});
