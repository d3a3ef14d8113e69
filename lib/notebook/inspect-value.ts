const LINE_WIDTH = 78;
const MOST_ITEMS = 100;
const DEEPEST = 6;
/** Digits shown of a number: enough for any laboratory, few enough to hide 0.1 + 0.2. */
const SIGNIFICANT_DIGITS = 12;

/**
 * A value as text for a reader: the same on every machine and in every browser, numbers rounded
 * to 12 significant digits, short objects on one line and long ones with one key a line.
 *
 * @param value anything; lists and objects are shown to 100 items and 6 levels
 * @returns text; a text is given back as it is
 *
 * @example
 * inspectValue({ strength: 0.1 + 0.2, bath: "stop" }) // => '{ strength: 0.3, bath: "stop" }'
 */
export function inspectValue(value: unknown): string {
  return typeof value === "string" ? value : shown(value, "", []);
}

function shown(value: unknown, indent: string, within: readonly unknown[]): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value === "number") return numberText(value);
  if (typeof value === "bigint") return `${value}n`;
  if (typeof value === "function") return functionText(value);
  if (typeof value !== "object" || value === null) return String(value);
  if (within.includes(value)) return "[circular]";
  if (within.length >= DEEPEST) return Array.isArray(value) ? "[…]" : "{…}";
  return objectText(value, indent, [...within, value]);
}

/** A number with at most 12 significant digits and no digit that says nothing. */
export function numberText(value: number): string {
  if (Object.is(value, -0)) return "0";
  if (!Number.isFinite(value) || Number.isInteger(value)) return String(value);
  return String(Number(value.toPrecision(SIGNIFICANT_DIGITS)));
}

function functionText(value: { readonly name: string; toString(): string }): string {
  const kind = /^class\b/.test(value.toString()) ? "class" : "function";
  return `[${kind} ${value.name || "without name"}]`;
}

function objectText(value: object, indent: string, within: readonly unknown[]): string {
  const inner = `${indent}  `;
  if (value instanceof Date) {
    return Number.isNaN(value.getTime()) ? "Invalid Date" : value.toISOString();
  }
  if (value instanceof RegExp) return String(value);
  if (value instanceof Error) return `${value.name}: ${value.message}`;
  if (value instanceof Promise) return "[promise: write await before it to see its value]";
  if (value instanceof Map) {
    const items = limited([...value], ([key, each]) => {
      return `${shown(key, inner, within)} → ${shown(each, inner, within)}`;
    });
    return laidOut(`Map(${value.size}) {`, items, "}", indent);
  }
  if (value instanceof Set) {
    const items = limited([...value], (each) => shown(each, inner, within));
    return laidOut(`Set(${value.size}) {`, items, "}", indent);
  }
  if (Array.isArray(value)) {
    const items = limited(value, (each) => shown(each, inner, within));
    return laidOut("[", items, "]", indent);
  }
  if (ArrayBuffer.isView(value) && !(value instanceof DataView)) {
    const numbers = [...(value as Iterable<unknown> & ArrayBufferView)];
    const items = limited(numbers, (each) => shown(each, inner, within));
    return laidOut(`${value.constructor.name}(${numbers.length}) [`, items, "]", indent);
  }
  const items = limited(Object.entries(value), ([key, each]) => {
    return `${keyText(key)}: ${shown(each, inner, within)}`;
  });
  return laidOut(`${className(value)}{`, items, "}", indent);
}

function limited<T>(items: readonly T[], text: (item: T) => string): readonly string[] {
  const texts = items.slice(0, MOST_ITEMS).map(text);
  const more = items.length - MOST_ITEMS;
  return more > 0 ? [...texts, `… ${more} more`] : texts;
}

function keyText(key: string): string {
  return /^[\p{ID_Start}$_][\p{ID_Continue}$]*$/u.test(key) ? key : JSON.stringify(key);
}

function className(value: object): string {
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype === Object.prototype || prototype === null) return "";
  return `${value.constructor?.name ?? "object"} `;
}

function laidOut(open: string, items: readonly string[], close: string, indent: string): string {
  if (items.length === 0) return open + close;
  const space = open.endsWith("[") ? "" : " ";
  const line = `${open}${space}${items.join(", ")}${space}${close}`;
  const fits = indent.length + line.length <= LINE_WIDTH && !line.includes("\n");
  if (fits) return line;
  const inner = `\n${indent}  `;
  const allShort = open.endsWith("[") && items.every((item) => /^[-+.\w]{1,16}$/.test(item));
  const lines = allShort ? packed(items, LINE_WIDTH - indent.length - 2) : items;
  const separator = allShort ? inner : `,${inner}`;
  return `${open}${inner}${lines.join(separator)}\n${indent}${close}`;
}

/** Short items of a list, as many a line as fit. */
function packed(items: readonly string[], width: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  items.forEach((item, i) => {
    const next = i === items.length - 1 ? item : `${item},`;
    if (line !== "" && line.length + 1 + next.length > width) {
      lines.push(line);
      line = next;
    } else line = line === "" ? next : `${line} ${next}`;
  });
  return [...lines, line];
}
