import type { Session, SessionStep } from "../../development/index.ts";
import { formatMinutes } from "../../units/index.ts";
import type { JsonObject } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

const [, orange, green, , grey, paleBlue] = palette.series;

/** What a bar is, its colour, dark enough to tell apart in a grey print. */
const KINDS = {
  handling: "#b9b9b9",
  "in the dark": palette.ink,
  developer: orange,
  "other baths": green,
  washing: paleBlue,
} as const;

const WASH = /(?:^|[ -])wash$|^rinse$/;
const HANDLING = ["mix", "turn round", "hang"];
/** Room at the left of the bars for clock and step, and for the step alone, pixels. */
const NAMES_PX = 176;
const STEP_PX = 102;

/** A row of the chart. */
interface TimelineRow {
  readonly row: number;
  /** Clock at which it begins. */
  readonly clock: string;
  readonly step: string;
  readonly from: number;
  readonly to: number;
  readonly kind: keyof typeof KINDS;
  readonly label: string;
}

/** One batch of a session as a panel: a bar for each step. */
export function batchPanel(
  session: Session,
  batch: number,
  steps: readonly SessionStep[],
  frame: { readonly plotWidth: number; readonly longest: number },
): JsonObject {
  const startS = steps[0]?.startS ?? 0;
  const minute = (atS: number) => (atS - startS) / 60;
  const second = steps.some((step) => step.bath.endsWith(" developer"));
  const rows = steps.map((step, row): TimelineRow => {
    const day = step.startDayOffset > 0 ? ` +${step.startDayOffset}` : "";
    const out = step.bath === "developer" ? step.actions.at(-1)?.clock : undefined;
    return {
      row,
      clock: `${step.startClock}${day}`,
      step: second && step.bath === "developer" ? "first developer" : step.bath,
      from: minute(step.startS),
      to: minute(step.endS),
      kind: kindOf(step),
      label: `${formatMinutes(step.lengthS / 60)}${out === undefined ? "" : `, out ${out}`}`,
    };
  });
  const developer = steps.find((step) => step.bath === "developer");
  // The marks count from the tank being full, which the first bout's action stands at.
  const full = developer?.actions[1]?.atS ?? 0;
  const developerRow = rows.find((each) => each.kind === "developer")?.row;
  const ticks = (developer?.agitationMarks ?? []).map((mark) => ({
    row: developerRow,
    at: minute(full + mark.fromS),
  }));
  const films = session.batches.find((each) => each.number === batch)?.films.join(", ");
  // The rows are named by text marks of fixed place: an axis would leave room by guessed widths.
  const y = { field: "row", type: "ordinal", axis: null, scale: { paddingInner: 0.3 } };
  const x = {
    type: "quantitative",
    title: "Time since the batch began (min)",
    // Room at the right for the length that stands after the last bar.
    scale: { domain: [0, frame.longest * 1.25], nice: false },
  };
  const color = {
    field: "kind",
    type: "nominal",
    scale: { domain: Object.keys(KINDS), range: Object.values(KINDS) },
    legend: { title: null, orient: "bottom", columns: 2, symbolType: "square", labelFontSize: 11 },
  };
  const text = (field: keyof TimelineRow, place: JsonObject, dx = 0) => ({
    mark: { type: "text", align: "left", baseline: "middle", fontSize: 11.5, dx },
    encoding: { y, x: place, text: { field } },
  });
  return {
    title: { text: `Batch ${batch}: ${films}`, fontSize: 12, offset: 4, dx: -NAMES_PX },
    width: frame.plotWidth,
    height: { step: 19 },
    data: { values: rows },
    layer: [
      {
        mark: { type: "bar", stroke: grey, strokeWidth: 0.5 },
        encoding: { y, x: { ...x, field: "from" }, x2: { field: "to" }, color },
      },
      {
        data: { values: ticks },
        mark: { type: "tick", color: "white", thickness: 1.5, size: 11 },
        encoding: { y, x: { ...x, field: "at" } },
      },
      text("clock", { value: -NAMES_PX }),
      text("step", { value: -STEP_PX }),
      text("label", { ...x, field: "to" }, 4),
    ],
  };
}

function kindOf(step: SessionStep): keyof typeof KINDS {
  if (step.bath === "developer") return "developer";
  if (step.dark) return "in the dark";
  if (HANDLING.includes(step.bath)) return "handling";
  return WASH.test(step.bath) ? "washing" : "other baths";
}
