/** What may separate the cells of a log, the usual one first. */
export const SEPARATORS = [",", ";", "\t"] as const;
export type Separator = (typeof SEPARATORS)[number];

const NAMES: Readonly<Record<Separator, string>> = {
  ",": "commas",
  ";": "semicolons",
  "\t": "tabs",
};

/**
 * The separator that cuts the header, the first line that is not blank, into the most cells; a
 * comma if none occurs. A first line `sep=;`, which some spreadsheets write, decides by itself.
 */
export function separatorIn(text: string): Separator {
  const header = /\S[^\n]*/.exec(text)?.[0] ?? "";
  const stated = /^sep=([,;\t])\s*$/i.exec(header)?.[1];
  if (stated !== undefined) return SEPARATORS.find((each) => each === stated) ?? ",";
  const outsideQuotes = header.replace(/"[^"]*"/g, "");
  let best: Separator = ",";
  let most = 0;
  for (const separator of SEPARATORS) {
    const count = outsideQuotes.split(separator).length - 1;
    if (count > most) {
      best = separator;
      most = count;
    }
  }
  return best;
}

/** The separator in words, for messages. */
export function separatorName(separator: Separator): string {
  return NAMES[separator];
}
