import type { Bundle, Output } from "./notebook-file.ts";
import type { RunEvent } from "./run-events.ts";
import { vegaLiteSvg } from "./vega-svg.ts";

const VEGA_LITE = "application/vnd.vegalite.v5+json";

/** The outputs of each cell (by number) in what a run told, figures drawn as SVG too. */
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
      return { output_type: "display_data", data: await drawn(event.data), metadata: {} };
    case "result": {
      const data = await drawn(event.data);
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

async function drawn(bundle: Bundle): Promise<Bundle> {
  const specification = bundle[VEGA_LITE];
  if (specification === undefined || "image/svg+xml" in bundle) return bundle;
  return { ...bundle, "image/svg+xml": await vegaLiteSvg(specification) };
}
