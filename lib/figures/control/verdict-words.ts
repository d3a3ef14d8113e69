import type { MorningCall, ProcessVerdict } from "../../control/index.ts";
import { requireObject } from "../../input/index.ts";

/**
 * The morning call in lines to be said aloud or printed in a terminal: the lab's verdict with its
 * reason first, then each process with what to do next.
 *
 * @param call the morning call
 * @returns one line for the lab and one for each process
 *
 * @example
 * verdictLines({ verdict: "run", reason: "all 2 processes are within limits", asOf: "2026-08-14T07:45", processes: [], warnings: [] })[0] // => "RUN as of 2026-08-14 07:45: all 2 processes are within limits."
 */
export function verdictLines(call: MorningCall): readonly string[] {
  requireObject("verdictLines", "call", call, "an object with verdict, reason, asOf, …");
  const time = call.asOf === "" ? "" : ` as of ${call.asOf.replace("T", " ")}`;
  return [
    `${call.verdict.toUpperCase()}${time}: ${call.reason}.`,
    ...call.processes.map((one) => `${one.name}: ${one.verdict}. ${one.next}`),
  ];
}

/**
 * The morning call as Markdown for a page: a heading for each process with its verdict, whether customer
 * work may go in, the reason, what to do next, what else should be known, and where the statistical
 * limits come from or why there are none.
 *
 * @param call the morning call
 * @returns Markdown text
 *
 * @example
 * verdictMarkdown({ verdict: "hold", reason: "", asOf: "", processes: [], warnings: [] }) // => ""
 */
export function verdictMarkdown(call: MorningCall): string {
  requireObject("verdictMarkdown", "call", call, "an object with verdict, reason, asOf, …");
  return call.processes
    .flatMap((one) => [
      `### ${one.name}: ${one.verdict}`,
      `**${workWords(one)}** ${sentence(one.reason)}`,
      `**Next:** ${one.next}`,
      ...one.notes.map(sentence),
      baseWords(one),
    ])
    .join("\n\n");
}

function workWords({ verdict, workMayRun }: ProcessVerdict): string {
  if (workMayRun) return "Customer work may run.";
  return verdict === "hold" ? "No customer work." : "Customer work waits.";
}

function baseWords({ statisticalBase: { charts, reason } }: ProcessVerdict): string {
  return charts === null
    ? `No statistical limits: ${reason}. Only the process's limits were asked.`
    : `Statistical limits from ${reason}.`;
}

function sentence(text: string): string {
  const whole = /[.!?]$/.test(text) ? text : `${text}.`;
  return whole.charAt(0).toUpperCase() + whole.slice(1);
}
