import { describe, expect, it } from "vitest";
import { readingsOfPump } from "wetside/records";

const reading = (pump: string) => ({
  readAt: "2026-08-14T18:05",
  pump,
  counterStrokes: 1,
  settingMlPerStroke: 5,
  counterReset: false,
});

describe("readingsOfPump", () => {
  it("gives one pump's rows and no others", () => {
    const rows = [reading("film-developer"), reading("film-fixer"), reading("film-developer")];
    expect(readingsOfPump(rows, "film-developer")).toHaveLength(2);
  });
  it("names the pumps that there are, and the one probably meant", () => {
    const rows = [reading("film-developer"), reading("film-fixer")];
    expect(() => readingsOfPump(rows, "film-developper")).toThrow(
      /film-developer, film-fixer.*did you mean "film-developer"/,
    );
    expect(() => readingsOfPump([], "a")).toThrow(/no readings/);
  });
});
