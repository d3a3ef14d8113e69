import type { ParameterVerdict, ProcessVerdict } from "../../control/index.ts";

const SEVERITY = { hold: 0, act: 1, run: 2 } as const;

/** Every parameter, the worst verdict first, in the order of the specification otherwise. */
export function worstFirst({
  parameters,
}: ProcessVerdict): readonly (ParameterVerdict & { readonly subject: string })[] {
  return [...parameters]
    .sort((a, b) => SEVERITY[a.verdict] - SEVERITY[b.verdict])
    .map((one) => ({ ...one, subject: subjectOf(one) }));
}

/** A parameter with its colour: "LD (speed) red". */
export function subjectOf({ name, colour }: { name: string; colour: string | null }): string {
  return colour === null ? name : `${name} ${colour}`;
}
