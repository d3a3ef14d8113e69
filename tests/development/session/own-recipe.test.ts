import { describe, expect, it } from "vitest";
import { InputError, type ProcessRecipe, planSession, processRecipe } from "wetside";

const kit = processRecipe("colour negative, bleach-fix");
const request = {
  start: "19:30",
  films: [{ name: "roll 1", format: "135-36" }],
  tank: "plastic, 1 reel",
  temperatures: { developerC: 37.8, roomC: 20, waterBathC: 37.8 },
};
const own = (more: object): ProcessRecipe => ({ ...kit, id: "my kit", ...more });
const minutes = (bath: string, to: number) =>
  kit.steps.map((step) => (step.bath === bath ? { ...step, minutes: to } : step));

describe("a kit of developer and bleach-fix", () => {
  const session = planSession({
    ...request,
    process: "colour negative, bleach-fix",
    bottles: [{ bath: "bleach-fix", volumeMl: 1000, capacityFilmsPerL: 12 }],
  });

  it("runs without bleach or fixer of its own, and warns of what must not meet", () => {
    const baths = session.steps.map((step) => step.bath);
    expect(baths.filter((bath) => /bleach|fixer/.test(bath))).toEqual(["bleach-fix"]);
    const step = session.steps.find((each) => each.bath === "bleach-fix");
    expect(step?.cautions.join()).toContain("household bleach");
  });

  it("counts the films of the bleach-fix", () => {
    expect(session.bottles.find((each) => each.bottle === "bleach-fix")?.filmsLeft).toBe(11);
  });
});

describe("a recipe of one's own", () => {
  it("follows the leaflet's minutes and extra washes", () => {
    const steps = minutes("bleach-fix", 8).flatMap((step) =>
      step.bath === "developer" ? [step, { ...step, bath: "second wash", minutes: 2 }] : [step],
    );
    const session = planSession({ ...request, process: own({ steps }) });
    expect(session.process).toBe("my kit");
    const long = session.steps.find((each) => each.bath === "bleach-fix");
    expect(long?.lengthS).toBe(8 * 60 + 15);
    const washed = session.steps.find((each) => each.bath === "second wash");
    expect(washed?.actions.at(-1)?.text).toContain("pour out second wash: away");
  });

  it.each([
    ["without a name", { id: "" }, 'a name such as "my kit"'],
    ["without steps", { steps: undefined }, "write a list"],
    ["without a developer", { steps: kit.steps.slice(2) }, 'whose bath is "developer"'],
    ["with a bath twice", { steps: [...kit.steps, kit.steps[1]] }, "each bath once"],
    ["with no time", { steps: minutes("bleach-fix", 0) }, "greater than 0 min"],
    ["with a lid on a bath it lacks", { lightsOn: { bath: "fixer", afterS: 0 } }, "lightsOn.bath"],
    ["without a normal time", { pushTimesMin: [{ stops: 1, minutes: 4 }] }, "stops: 0"],
    [
      "with a developer in °F",
      { steps: kit.steps.map((s) => ({ ...s, temperatureC: 100 })) },
      "100 °F would be 37.8 °C",
    ],
  ])("is refused %s", (_, more, advice) => {
    expect(() => processRecipe(own(more))).toThrow(InputError);
    expect(() => processRecipe(own(more))).toThrow(advice);
  });
});
