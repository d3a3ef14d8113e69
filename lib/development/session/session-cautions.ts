const GLOVES = "gloves and goggles; rinse splashes off at once with much water";

const BY_BATH: Readonly<Record<string, readonly string[]>> = {
  mix: [
    "pour acid or concentrate into water, never water into acid; air the room",
    "the label's and the safety data sheet's warnings go before anything written here",
  ],
  developer: [`developers are alkaline and can sensitise the skin: ${GLOVES}`],
  "colour developer": [`colour developing agents sensitise the skin: ${GLOVES}`],
  stop: [`the stop bath is acid: ${GLOVES}; do not breathe over the open tank`],
  bleach: [
    `bleach stains and irritates: ${GLOVES}`,
    "never let bleach meet acid, hypochlorite (household bleach) or a used fixer's bottle",
  ],
  "bleach-fix": [
    `bleach-fix stains and irritates: ${GLOVES}`,
    "never let bleach-fix meet acid or hypochlorite (household bleach): it gives off poisonous gas",
    "used bleach-fix holds silver and belongs in a collection bottle, unless the local code allows the drain",
  ],
  "pre-bleach": [`pre-bleach may release traces of formaldehyde: air the room; ${GLOVES}`],
  fixer: [
    "never let fixer meet strong acid or household bleach: it gives off poisonous gas",
    "used fixer holds silver and belongs in a collection bottle, not in the drain, unless the local code allows it",
  ],
  "final rinse": [`the final rinse may hold a biocide or formaldehyde: air the room; ${GLOVES}`],
};

/** What to mind at a bath. */
export function bathCautions(bath: string): readonly string[] {
  return BY_BATH[bath] ?? [];
}

/** What to mind during the whole session. */
export const sessionCautions: readonly string[] = [
  "keep measures and bottles for chemicals apart from kitchen ware, label every bottle, keep children away",
  "no food or drink at the sink; air the room",
  "discharge: the local code and a licensed collector decide what may go down the drain",
  "safety data sheets of your own chemicals go before these general cautions",
];
