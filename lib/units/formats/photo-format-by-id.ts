import { closestWord, InputError } from "../../input/index.ts";
import { type PhotoFormat, photoFormats } from "./photo-format.ts";

/**
 * The film or paper format with a name.
 *
 * @param id as in the list `photoFormats`: `"135-36"`, `"120"`, `"4x6in"`, `"10x15cm"`
 * @returns the format, with width and length in mm
 * @throws InputError for a name that is not in the list, with the closest one
 *
 * @example
 * photoFormat("120").widthMm // => 61.5
 */
export function photoFormat(id: string): PhotoFormat {
  return photoFormatFor("photoFormat", id);
}

/** The same for another function, whose name then stands in the message. */
export function photoFormatFor(where: string, id: unknown): PhotoFormat {
  const found = photoFormats.find((format) => format.id === id);
  if (found) return found;
  const ids = photoFormats.map((format) => format.id);
  const near = typeof id === "string" ? closestWord(id.replace(/[×* ]/g, "x"), ids) : undefined;
  const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
  throw new InputError(where, "format", id, `write one of ${ids.join(", ")}${meant}`);
}
