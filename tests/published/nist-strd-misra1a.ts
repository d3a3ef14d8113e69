export { computed } from "./nist-strd-contrast-laws.ts";
