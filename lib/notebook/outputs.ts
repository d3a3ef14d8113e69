import type { Bundle, Output } from "./notebook-file.ts";
import { MissingPackageError } from "./optional-package.ts";
import type { RunEvent } from "./run-events.ts";
import { vegaLiteSvg } from "./vega-svg.ts";

const VEGA_LITE = "application/vnd.vegalite.v5+json";

/** A figure that Vega-Lite cannot draw. */
export class FigureError extends Error {
  /** Number of the cell that shows it. */
  readonly cell: number;

  constructor(cell: number, reason: string) {
    super(`its figure cannot be drawn: ${reason}`);
    this.name = "FigureError";
    this.cell = cell;
  }
}

/**
 * The outputs of each cell (by number) in what a run told, figures drawn as SVG too.
 *
 * @throws FigureError for a figure that cannot be drawn
 */
export async function collectOutputs(
  events: readonly RunEvent[],
): Promise<ReadonlyMap<number, readonly Output[]>> {
  const byCell = new Map<number, Output[]>();
  let cell = 0;
  for (const event of events) {
    if (event.type === "begin") cell = event.cell;
    const outputs = byCell.get(cell) ?? [];
    byCell.set(cell, outputs);
    const output = await outputOf(event, cell, outputs.at(-1));
    if (output !== undefined) outputs.push(output);
  }
  return byCell;
}

async function outputOf(
  event: RunEvent,
  cell: number,
  before: Output | undefined,
): Promise<Output | undefined> {
  switch (event.type) {
    case "stream": {
      const { name, text } = event;
      if (before?.output_type !== "stream" || before.name !== name) {
        return { output_type: "stream", name, text };
      }
      before.text += text;
      return undefined;
    }
    case "display":
      return { output_type: "display_data", data: await drawn(event.data, cell), metadata: {} };
    case "result": {
      const data = await drawn(event.data, cell);
      return { output_type: "execute_result", data, metadata: {}, execution_count: cell };
    }
    case "caught": {
      const { name: ename, message: evalue } = event;
      return { output_type: "error", ename, evalue, traceback: [`${ename}: ${evalue}`] };
    }
    default:
      return undefined;
  }
}

async function drawn(bundle: Bundle, cell: number): Promise<Bundle> {
  const specification = bundle[VEGA_LITE];
  if (specification === undefined || "image/svg+xml" in bundle) return bundle;
  try {
    return { ...bundle, "image/svg+xml": await vegaLiteSvg(specification) };
  } catch (error) {
    if (error instanceof MissingPackageError) throw error;
    throw new FigureError(cell, error instanceof Error ? error.message : String(error));
  }
}
