import type { MorningCall } from "../control/index.ts";

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
  const time = call.asOf.replace("T", " ");
  return [
    `${call.verdict.toUpperCase()} as of ${time}: ${call.reason}.`,
    ...call.processes.map((one) => `${one.name}: ${one.verdict}. ${one.next}`),
  ];
}

/**
 * The morning call as Markdown for a page: a heading for each process with its verdict, the reason,
 * what to do next, and what else should be known.
 *
 * @param call the morning call
 * @returns Markdown text
 *
 * @example
 * verdictMarkdown({ verdict: "hold", reason: "", asOf: "", processes: [], warnings: [] }) // => ""
 */
export function verdictMarkdown(call: MorningCall): string {
  return call.processes
    .flatMap(({ name, verdict, reason, next, notes }) => [
      `### ${name}: ${verdict}`,
      `${sentence(reason)}`,
      `**Next:** ${next}`,
      ...notes.map(sentence),
    ])
    .join("\n\n");
}

function sentence(text: string): string {
  const whole = /[.!?]$/.test(text) ? text : `${text}.`;
  return whole.charAt(0).toUpperCase() + whole.slice(1);
}
