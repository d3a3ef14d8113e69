/**
 * JSON text exactly as Jupyter writes a notebook: one space of indentation, keys in order of their
 * code points, numbers as Python prints them, a newline at the end. So a notebook that Jupyter
 * saves again without a change has no changed line.
 */
export function pythonJson(value: unknown): string {
  return `${written(value, "")}\n`;
}

function written(value: unknown, indent: string): string {
  if (typeof value === "number") return pythonNumber(value);
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const inner = `${indent} `;
  if (Array.isArray(value)) {
    const items = value.map((item) => `${inner}${written(item, inner)}`);
    return items.length === 0 ? "[]" : `[\n${items.join(",\n")}\n${indent}]`;
  }
  const entries = Object.entries(value)
    .filter(([, each]) => each !== undefined)
    .sort(([a], [b]) => compareCodePoints(a, b))
    .map(([key, each]) => `${inner}${JSON.stringify(key)}: ${written(each, inner)}`);
  return entries.length === 0 ? "{}" : `{\n${entries.join(",\n")}\n${indent}}`;
}

function compareCodePoints(a: string, b: string): number {
  const left = [...a];
  const right = [...b];
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const difference = (left[i]?.codePointAt(0) ?? 0) - (right[i]?.codePointAt(0) ?? 0);
    if (difference !== 0) return difference;
  }
  return left.length - right.length;
}

/** Python turns to exponents earlier than JavaScript and writes them with two digits. */
function pythonNumber(value: number): string {
  if (!Number.isFinite(value)) return "null";
  const text = String(value);
  const size = Math.abs(value);
  const whole = /^-?\d+$/.test(text);
  if (whole || (size >= 1e-4 && size < 1e16)) return text;
  const [digits = "", exponent = "0"] = value.toExponential().split("e");
  const sign = exponent.startsWith("-") ? "-" : "+";
  return `${digits}e${sign}${exponent.replace(/^[-+]/, "").padStart(2, "0")}`;
}
