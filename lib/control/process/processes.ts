import colourNegative from "../../../data/processes/colour-negative.json" with { type: "json" };
import colourPaper from "../../../data/processes/colour-paper.json" with { type: "json" };
import { parseProcessSpecification } from "./parse-process-specification.ts";
import type { ProcessSpecification } from "./process-specification.ts";

/**
 * A colour-negative film process: D-min, LD, HD − LD, retained silver, colour spread. Its limits are
 * from memory of a maker's table and unverified; replace them by those of your film's maker.
 *
 * @example
 * colourNegativeProcess.parameters[1]?.limits.action?.upper // => 0.06
 */
export const colourNegativeProcess: ProcessSpecification =
  /* @__PURE__ */ parseProcessSpecification(colourNegative);

/**
 * A colour-paper process: D-min, LD, HD − LD, black patch, colour spread. Most of its limits were not
 * found in print and are working defaults; replace them by those of your paper's maker.
 *
 * @example
 * colourPaperProcess.parameters[0]?.limits.control?.upper // => 0.02
 */
export const colourPaperProcess: ProcessSpecification =
  /* @__PURE__ */ parseProcessSpecification(colourPaper);
