import { describe, expect, it } from "vitest";
import { compensateTime, factorPerTenDegreesModel } from "../../../lib/development/index.ts";

const model = factorPerTenDegreesModel({ factorPerTenDegrees: 2.5 });
const asked = { timeMin: 10, fromTemperatureC: 20, toTemperatureC: 22 };

describe("a rate model of one's own", () => {
  it("is refused without the range it rests on", () => {
    const { minC } = model.range;
    for (const range of [undefined, {}, { minC, maxC: Number.NaN }, { minC, maxC: "30" }]) {
      const broken = { ...model, range } as never;
      expect(() => compensateTime({ ...asked, model: broken } as never)).toThrow(/range/);
    }
    const open = { ...model, refuseBeyondC: undefined } as never;
    expect(() => compensateTime({ ...asked, model: open } as never)).toThrow("refuseBeyondC");
  });
});
