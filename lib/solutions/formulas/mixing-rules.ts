/** Why one kind of chemical must be dissolved before another. */
export interface MixingRule {
  /** Tag of the chemical that goes in first. */
  readonly before: string;
  readonly after: string;
  readonly why: string;
  readonly source: string;
}

const COMMON = "common practice, no source";
const HARDENER = "Studio Light (1916), Stock solution of hardener";

/** The rules by which an order of mixing is made and checked. */
export const mixingRules: readonly MixingRule[] = [
  {
    before: "metol",
    after: "sulfite",
    why: "metol hardly dissolves in strong sulfite; only a pinch of the sulfite goes in before it, against the air",
    source: COMMON,
  },
  {
    before: "sulfite",
    after: "hydroquinone",
    why: "hydroquinone browns in water that holds air; sulfite takes the oxygen up first",
    source: COMMON,
  },
  {
    before: "sulfite",
    after: "alkali",
    why: "a developing agent in alkali without sulfite oxidises at once",
    source: COMMON,
  },
  {
    before: "hydroquinone",
    after: "alkali",
    why: "the developing agents are to be dissolved, and the sulfite with them, before the alkali wakes them",
    source: COMMON,
  },
  {
    before: "alkali",
    after: "pyrazolidinone",
    why: "it dissolves slowly in water and readily in warm alkali",
    source: COMMON,
  },
  {
    before: "alkali",
    after: "colour developing agent",
    why: "the colour developing agent goes in last, into sulfite and alkali, so that it meets the least air",
    source: COMMON,
  },
  {
    before: "thiosulfate",
    after: "acid",
    why: "acid in a bath where thiosulfate is not yet dissolved and kept by sulfite throws sulfur down",
    source: HARDENER,
  },
  {
    before: "thiosulfate",
    after: "bisulfite",
    why: "metabisulfite goes into the dissolved and cooled thiosulfate, or sulfur dioxide escapes",
    source: COMMON,
  },
  {
    before: "sulfite",
    after: "acid",
    why: "sulfite must be there to keep the thiosulfate when the acid comes",
    source: HARDENER,
  },
  {
    before: "sulfite",
    after: "alum",
    why: "alum with sulfite and no acid throws aluminium sulfite down, which is hard to dissolve again",
    source: HARDENER,
  },
  {
    before: "acid",
    after: "alum",
    why: "alum with sulfite and no acid throws aluminium sulfite down, which is hard to dissolve again",
    source: HARDENER,
  },
];
