const UNDILUTED = /^(neat|undiluted|full strength|concentrate|100\s*%|1\s*\+\s*0)$/;
const WORDS = /(?<![a-z])(ml|cc|l|litres?|liters?|parts?|water|stock|concentrate|of)(?![a-z])/g;

/** What to write instead of a text that is not a ratio, both readings where there are two. */
export function adviceForRatio(given: string): string {
  const power = /\de[+-]?\d/.test(given);
  if (power) return 'write every part in full digits, without a power of ten, like "1+1000"';
  if (UNDILUTED.test(given)) return 'write "stock"';
  // Words between the numbers ("1 part to 9 parts", "1 mL:9 mL") do not change what it may mean.
  const text = given.replace(WORDS, " ").replace(/\s+/g, " ").trim();
  const colon = text.split(/\s*[:∶/]\s*|\s+to\s+/).map(Number);
  if (colon.length >= 2 && colon.every((part) => Number.isFinite(part) && part > 0)) {
    return bothReadings(colon);
  }
  const inWhole = /^([\d.]+)\s*in\s*([\d.]+)$/.exec(text);
  if (inWhole && Number(inWhole[2]) > Number(inWhole[1])) {
    return `write "${trimmed(Number(inWhole[1]))}+${trimmed(Number(inWhole[2]) - Number(inWhole[1]))}"`;
  }
  const percent = /^([\d.]+)\s*%$/.exec(text);
  if (percent && Number(percent[1]) > 0 && Number(percent[1]) < 100) {
    return `write "1+${trimmed(100 / Number(percent[1]) - 1)}" (${percent[1]} mL in 100 mL)`;
  }
  if (/\d,\d/.test(text)) return `write "${text.replace(/,/g, ".")}", with a decimal point`;
  if (/-/.test(text)) return 'write parts greater than 0 joined by a plus sign, like "1+9"';
  const numbers = text.match(/\d+(?:\.\d+)?/g);
  if (/\+/.test(text) && /[a-z%]/.test(given) && numbers && numbers.length >= 2) {
    return `write parts without units, "${numbers.join("+")}", or the total wanted in mL beside the ratio`;
  }
  if (/^\d+(\.\d+)?$/.test(text)) return `write "1+${text}" or "stock"`;
  if (/[a-z]/.test(text)) return 'write "stock" for undiluted, or parts without words, like "1+9"';
  return 'write parts joined by a plus sign, like "1+9" or "1+1+18"';
}

function bothReadings(numbers: readonly number[]): string {
  const concentrate = numbers.slice(0, -1);
  const last = numbers.at(-1) ?? 0;
  const sum = concentrate.reduce((total, part) => total + part, 0);
  const words =
    concentrate.length === 1 ? `${trimmed(sum)} ${plural(sum)} concentrate` : "the parts";
  const asWater = `"${[...concentrate, last].map(trimmed).join("+")}" (${words} and ${trimmed(last)} of water)`;
  if (last < sum && concentrate.length === 1) {
    return `write ${asWater}, or "${trimmed(last)}+${trimmed(sum)}" if the water stands first`;
  }
  if (last < sum) return `write ${asWater}`;
  const rest = trimmed(last - sum);
  const asTotal =
    last === sum
      ? '"stock" (no water)'
      : `"${[...concentrate.map(trimmed), rest].join("+")}" (${words} in ${trimmed(last)} of the whole)`;
  return `ambiguous: write ${asWater} or ${asTotal}`;
}

function plural(count: number): string {
  return count === 1 ? "part" : "parts";
}

function trimmed(value: number): string {
  return String(Number(value.toPrecision(6)));
}
