export { InputError } from "./input-error.ts";
export { closestWord, type NumberBounds, requireNumber, requireOneOf } from "./require.ts";
export { requireEntries, requireFunction, requireObject } from "./require-shape.ts";
