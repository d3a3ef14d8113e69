import { describe, expect, it } from "vitest";
import { agitationMarks, agitationSchemes, InputError } from "wetside";

describe("agitationMarks", () => {
  it("begins with the first bout and ends before pouring out", () => {
    expect(agitationMarks("60 s, then 10 s a minute", 190)).toEqual([
      { fromS: 0, toS: 60 },
      { fromS: 120, toS: 130 },
    ]);
  });

  it("cuts a bout short where pouring out begins", () => {
    expect(agitationMarks("30 s, then 10 s every 30 s", 75, 10)).toEqual([
      { fromS: 0, toS: 30 },
      { fromS: 60, toS: 65 },
    ]);
  });

  it("lets a first bout that fills its own interval count as the bout of that interval", () => {
    const every = { ...agitationSchemes[0], initialS: 30, everyS: 30, forS: 10 };
    const scheme = { ...every, id: "own", how: "", warning: null, source: "", howObtained: "" };
    expect(agitationMarks(scheme, 100, 0).map((mark) => mark.fromS)).toEqual([0, 60, 90]);
  });

  it("turns all the time, but not while pouring", () => {
    expect(agitationMarks("continuous", 60)).toEqual([{ fromS: 0, toS: 50 }]);
    expect(agitationMarks("continuous", 10, 10)).toEqual([]);
  });

  it("leaves a tank alone after the first bout", () => {
    expect(agitationMarks("stand", 3600)).toEqual([{ fromS: 0, toS: 60 }]);
  });

  it("never lets one bout run into the next, for any scheme and length", () => {
    for (const scheme of agitationSchemes) {
      for (const timeS of [5, 29, 60, 61, 300, 1234]) {
        const marks = agitationMarks(scheme, timeS, Math.min(10, timeS));
        marks.forEach((mark, i) => {
          expect(mark.toS).toBeGreaterThan(mark.fromS);
          expect(mark.toS).toBeLessThanOrEqual(timeS - Math.min(10, timeS));
          expect(mark.fromS).toBeGreaterThanOrEqual(marks[i - 1]?.toS ?? 0);
        });
      }
    }
  });

  it("refuses an unknown scheme, naming the nearest, and times that cannot be", () => {
    expect(() => agitationMarks("continous", 60)).toThrow('did you mean "continuous"');
    for (const timeS of [0, -1, Number.NaN]) {
      expect(() => agitationMarks("stand", timeS)).toThrow(InputError);
    }
    expect(() => agitationMarks("stand", 60, 61)).toThrow(InputError);
  });

  it("refuses a scheme of one's own whose bouts are longer than their interval", () => {
    const own = { ...agitationSchemes[0], id: "own", initialS: 30, everyS: 30, forS: 40 };
    const scheme = { ...own, how: "", warning: null, source: "", howObtained: "" };
    expect(() => agitationMarks(scheme, 60)).toThrow(InputError);
  });
});

describe("the agitation schemes", () => {
  it("carry a source each, and times that can be", () => {
    expect(agitationSchemes.length).toBeGreaterThan(4);
    for (const scheme of agitationSchemes) {
      expect(scheme.source).not.toBe("");
      expect(["read in a copy", "common practice"]).toContain(scheme.howObtained.split(";")[0]);
      expect(() => agitationMarks(scheme, 600)).not.toThrow();
    }
    expect(new Set(agitationSchemes.map((each) => each.id)).size).toBe(agitationSchemes.length);
  });
});
