import { requireEntries, requireObject } from "../input/index.ts";
import type { MixingSheet } from "./mixing-sheet.ts";

const WIDTH = 76;

/**
 * A mixing sheet as plain text, to print and pin up.
 *
 * @param sheet any mixing sheet
 * @returns lines of at most 76 characters: title, steps with amounts in a column, cost, cautions
 *
 * @example
 * mixingSheetText({ title: "Stop bath", volumeMl: 1000, steps: [], cost: null, assumptions: [], warnings: [], cautions: [] }) // => "Stop bath\nMakes 1 L\n"
 */
export function mixingSheetText(sheet: MixingSheet): string {
  requireObject("mixingSheetText", "sheet", sheet, "an object with title, volumeMl, steps, …");
  requireEntries("mixingSheetText", "cautions", sheet.cautions, "a list of texts");
  requireEntries("mixingSheetText", "warnings", sheet.warnings, "a list of texts");
  requireEntries("mixingSheetText", "assumptions", sheet.assumptions, "a list of texts");
  if (sheet.cost !== null)
    requireObject(
      "mixingSheetText",
      "cost",
      sheet.cost,
      "an object with currency, total, perLitre, …",
    );
  requireEntries("mixingSheetText", "steps", sheet.steps);
  const lines = [sheet.title, `Makes ${asVolume(sheet.volumeMl)}`];
  if (sheet.steps.length > 0) lines.push("", ...stepLines(sheet));
  if (sheet.cost !== null) {
    const { currency, total, perLitre, unpriced } = sheet.cost;
    lines.push(
      "",
      `Cost ${total.toFixed(2)} ${currency}, ${perLitre.toFixed(2)} ${currency} per L`,
    );
    if (unpriced.length > 0) lines.push(...wrapped(`Not priced: ${unpriced.join(", ")}`, ""));
  }
  for (const [heading, sentences] of [
    ["Cautions", sheet.cautions],
    ["Warnings", sheet.warnings],
    ["Assumed", sheet.assumptions],
  ] as const) {
    if (sentences.length === 0) continue;
    lines.push("", heading, ...sentences.flatMap((sentence) => wrapped(sentence, "- ")));
  }
  return `${lines.join("\n")}\n`;
}

function stepLines(sheet: MixingSheet): string[] {
  const amounts = sheet.steps.map((step) => `${tidy(step.amount)} ${step.unit}`);
  const wide = Math.max(...amounts.map((amount) => amount.length));
  return sheet.steps.flatMap((step, i) => {
    const number = String(step.order).padStart(2);
    const head = `${number}  ${(amounts[i] ?? "").padStart(wide)}  `;
    const text = step.note === "" ? step.what : `${step.what} (${step.note})`;
    return wrapped(text, head);
  });
}

/** Breaks a sentence at blanks; following lines stand under the first word. */
function wrapped(text: string, head: string): string[] {
  const lines: string[] = [];
  let line = head;
  const indent = " ".repeat(head.length);
  for (const word of text.split(" ")) {
    const empty = line === head || line === indent;
    if (!empty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = indent;
    }
    line += line === head || line === indent ? word : ` ${word}`;
  }
  return [...lines, line];
}

function asVolume(volumeMl: number): string {
  return volumeMl >= 1000 ? `${tidy(volumeMl / 1000)} L` : `${tidy(volumeMl)} mL`;
}

/** Four figures are more than any graduate or balance of a darkroom shows. */
function tidy(value: number): string {
  return String(Number(value.toPrecision(value >= 1000 ? 6 : 4)));
}
