import { describe, expect, it } from "vitest";
import { InputError, planSession, processRecipe, type Session, type SessionRequest } from "wetside";

const negative: SessionRequest = {
  start: "14:00",
  process: "colour negative",
  films: [{ name: "a", format: "135-36" }],
  tank: "plastic, 1 reel",
  temperatures: { developerC: 37.8, roomC: 20, waterBathC: 37.8 },
};
const plan = (more: object) => planSession({ ...negative, ...more });
const step = (session: Session, bath: string) => {
  const found = session.steps.find((each) => each.bath === bath);
  if (found === undefined) throw new Error(`no step ${bath}`);
  return found;
};
const texts = (session: Session) => session.steps.flatMap((s) => s.actions.map((a) => a.text));

describe("the washes of a colour session", () => {
  it("change the water once a minute and keep the length of the process", () => {
    const wash = step(plan({}), "wash");
    // 3:15 and 15 s to fill: three changes of 70 s.
    expect(wash.lengthS).toBe(15 + 195);
    const fills = wash.actions.filter((each) => each.text.includes("change"));
    expect(fills.map((each) => each.atS - wash.startS)).toEqual([0, 70, 140]);
    expect(wash.actions.at(-1)?.atS).toBe(wash.endS - 10);
    expect(wash.actions.at(-1)?.timerS).toBe(45);
    expect(wash.agitation).toBe("3 changes");
  });

  it("say how much warm water must stand ready", () => {
    // Pre-wash, three changes after the bleach, three after the fixer, 290 mL each.
    expect(texts(plan({}))).toContain("have 2.0 L of water at 38 °C ready: 7 fills");
    expect(texts(plan({ preWash: false }))).toContain(
      "have 1.7 L of water at 38 °C ready: 6 fills",
    );
  });

  it("run without changes where the water flows", () => {
    const flowing = plan({ wash: { by: "flow" } });
    const wash = step(flowing, "wash");
    expect(wash.lengthS).toBe(15 + 195);
    expect(wash.actions[0]?.text).toContain("run water at 38.0 °C through the tank");
    expect(wash.volumeMl).toBeNull();
    expect(texts(flowing).join()).not.toContain("fills");
  });

  it("are not cut up where pouring would take all of the time", () => {
    const wash = step(plan({ handling: { pourInS: 90, pourOutS: 60 } }), "wash");
    expect(wash.actions.filter((each) => each.text.startsWith("pour in"))).toHaveLength(1);
  });

  it("open the lid in a recipe of one's own that says so", () => {
    const kit = processRecipe("colour negative");
    const process = { ...kit, id: "my kit", lightsOn: { bath: "wash", afterS: 60 } };
    const wash = step(plan({ process }), "wash");
    const lid = wash.actions.find((each) => each.text.includes("lid may come off"));
    expect((lid?.atS ?? 0) - wash.startS).toBe(15 + 60);
  });
});

describe("temperatures of the other baths of a colour session", () => {
  const at = (more: object) => plan({ temperatures: { ...negative.temperatures, ...more } });

  it("are the process's own unless they were measured", () => {
    expect(step(plan({}), "bleach").temperatureC).toBe(38);
    expect(step(at({ fixerC: 36 }), "bleach").temperatureC).toBe(36);
    expect(step(at({ washC: 30 }), "first wash").temperatureC).toBe(30);
  });

  it("are warned of outside the tolerance and not inside it", () => {
    expect(at({ fixerC: 36, washC: 40 }).warnings).toEqual(plan({}).warnings);
    const cold = at({ fixerC: 25, washC: 12 }).warnings.join("\n");
    expect(cold).toContain("fixer: at 25 °C it is outside its tolerance, 38 ± 3 °C");
    expect(cold).toContain("first wash: at 12 °C it is outside its tolerance, 38 ± 3 °C");
  });

  it("hold the colour developer of reversal to its own, narrower tolerance", () => {
    const temperatures = { developerC: 38, roomC: 20, waterBathC: 38, fixerC: 37 };
    const { warnings } = plan({ process: "colour reversal", temperatures });
    expect(warnings).toContain(
      "colour developer: at 37 °C it is outside its tolerance, 38 ± 0.6 °C",
    );
    expect(warnings.join()).not.toContain("bleach: at");
  });
});

describe("a colour session", () => {
  it("calls the developer the first one where a second follows", () => {
    const temperatures = { developerC: 38, roomC: 20, waterBathC: 38 };
    const lines = texts(plan({ process: "colour reversal", temperatures }));
    expect(lines).toContain("measure 290 mL first developer, 38.0 °C");
    expect(lines).toContain("pour in first developer: 290 mL, 38.0 ± 0.3 °C");
    expect(lines.some((line) => line.startsWith("pour out first developer"))).toBe(true);
    expect(texts(plan({})).join()).not.toContain("first developer");
  });

  it("claims no error of development: no law is used", () => {
    const { development } = plan({}).batches[0] ?? {};
    expect(development?.errorIfUncorrectedPercent).toBeNull();
    expect(development?.errorWithoutDriftPercent).toBeNull();
  });

  it.each([
    ["a stop", { stop: "water" }, "has no stop bath"],
    ["a fixer's clearing time", { fixer: { clearingTimeFreshS: 60 } }, "a fixing time of its own"],
    ["changes of wash", { wash: { by: "changes", changes: 9 } }, "write only by"],
    ["a wash aid", { wash: { by: "flow", aid: true } }, "washes of its own"],
    ["a wash nobody knows", { wash: { by: "flows" } }, 'did you mean "flow"'],
  ])("refuses %s rather than leave it out in silence", (_, more, advice) => {
    expect(() => plan(more)).toThrow(InputError);
    expect(() => plan(more)).toThrow(advice);
  });

  it("takes a stop where the recipe has one", () => {
    const kit = processRecipe("colour negative");
    const stop = { ...kit.steps[1], bath: "stop", minutes: 0.5, toleranceC: 3 };
    const steps = kit.steps.flatMap((each) => (each.bath === "developer" ? [each, stop] : [each]));
    const session = plan({ process: { ...kit, id: "my kit", steps }, stop: "water" });
    expect(session.steps.map((each) => each.bath)).toContain("water stop");
  });
});
