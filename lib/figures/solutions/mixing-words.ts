import { requireEntries, requireObject } from "../../input/index.ts";
import type { AcidMix, HydrometerCheck } from "../../solutions/index.ts";

/**
 * What to pour for an acid of a wanted strength, in Markdown.
 *
 * @param mix from `acidToStrength`, with water
 * @param strong name of the strong acid, as on the bottle
 * @returns one paragraph; volumes to 1 mL
 *
 * @example
 * acidMixWords(acidToStrength({ substance: "acetic acid", strongPercent: 99.5, targetPercent: 28, totalMl: 2000 }), "glacial acetic acid").includes("555 mL of glacial acetic acid into 1490 mL of water") // => true
 */
export function acidMixWords(mix: AcidMix, strong: string): string {
  requireObject("acidMixWords", "mix", mix, "an object with strongG, strongMl, weakG, …");
  const [acid, water] = [mix.strongMl.toFixed(0), mix.weakMl.toFixed(0)];
  const lost = mix.contractionMl.toFixed(0);
  const before = (mix.strongMl + mix.weakMl).toFixed(0);
  return [
    `Pour **${acid} mL of ${strong} into ${water} mL of water**, never the other way round.`,
    `Together that is ${before} mL before they meet and ${mix.totalMl} mL after: ${lost} mL are lost.`,
    `In small whole parts: **${mix.volumeRule}**, which makes ${mix.volumeRulePercent.toFixed(1)} %.`,
  ].join(" ");
}

/**
 * What a hydrometer says of a mix and what to do, in Markdown.
 *
 * @param check from `hydrometerCheck`
 * @returns one paragraph: verdict, strength, correction in litres
 *
 * @example
 * hydrometerWords(hydrometerCheck({ reading: 1.044, temperatureC: 20, points: [{ specificGravity: 1, strength: 0 }, { specificGravity: 1.05, strength: 1.25 }], target: 1, tankMl: 12000, presentMl: 10000 })) // => "**Too strong**: 110.0 % of the right mix, at a gravity of 1.0440 at the scale's temperature. Add **1.00 L of water**; the vessel then holds 11.00 L."
 */
export function hydrometerWords(check: HydrometerCheck): string {
  requireObject("hydrometerWords", "check", check, "an object with target, deviation, verdict, …");
  const { action, dumpMl, addMl, addStrength, finalMl } = check.correction;
  const litres = (volumeMl: number) => `${(volumeMl / 1000).toFixed(2)} L`;
  const percent = (100 * (1 + check.deviation)).toFixed(1);
  const verdict = check.verdict.charAt(0).toUpperCase() + check.verdict.slice(1);
  const what = addStrength === 0 ? "water" : "concentrate";
  const first = action === "dump and add" ? `Dump ${litres(dumpMl)} first, then add` : "Add";
  const todo =
    action === "nothing"
      ? "Leave it."
      : `${first} **${litres(addMl)} of ${what}**; the vessel then holds ${litres(finalMl)}.`;
  const gravity = check.specificGravity.toFixed(4);
  return `**${verdict}**: ${percent} % of the right mix, at a gravity of ${gravity} at the scale's temperature. ${todo}`;
}

/**
 * What can hurt in one or several mixes, as a list in Markdown: each sentence once, warnings in bold.
 *
 * @param sheets mixing sheets, or anything else with `cautions`
 * @returns a list; for a mix without cautions a line that says so
 * @throws InputError for what has no list of cautions
 *
 * @example
 * cautionWords({ warnings: ["small for this graduate"], cautions: ["Goggles."] }) // => "- **small for this graduate**\n- Goggles."
 */
export function cautionWords(
  ...sheets: readonly {
    readonly cautions: readonly string[];
    readonly warnings?: readonly string[];
  }[]
): string {
  sheets.forEach((sheet, i) => {
    requireObject("cautionWords", `sheets[${i}]`, sheet, "a mixing sheet");
    requireEntries("cautionWords", `sheets[${i}].cautions`, sheet.cautions, "a list of sentences");
  });
  const warnings = sheets.flatMap((sheet) => sheet.warnings ?? []).map((text) => `**${text}**`);
  const lines = new Set([...warnings, ...sheets.flatMap((sheet) => sheet.cautions)]);
  if (lines.size === 0)
    return "No caution is known to the library, which is not a proof of safety.";
  return [...lines].map((line) => `- ${line}`).join("\n");
}
