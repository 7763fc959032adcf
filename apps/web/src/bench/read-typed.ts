import {
  celsiusFromFahrenheit,
  fahrenheit,
  parseAmount,
  parseStrength,
  parseVolume,
} from "@partsproof/core/quantity";
import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import type { Issue } from "@partsproof/house/protocol";

/** What a typed text came to. */
export type Typed =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly wrong: string };

const wrong = (issue: Pick<Issue, "message">): Typed => ({ ok: false, wrong: issue.message });

const shown = (text: string): string => (text.trim() === "" ? "nothing" : `"${text.trim().slice(0, 40)}"`);

/** A strength, % vol at 20 °C: "62.4%", "124.8 proof". */
export function readStrengthOf(text: string): Typed {
  const read = parseStrength(text);
  return read.ok ? { ok: true, value: abv20OfStrength(read.value) } : wrong(read.issue);
}

/** A volume above 0, mL: "700 mL", "70 cl", "2 oz". */
export function readVolumeOf(text: string): Typed {
  const read = parseVolume(text);
  if (!read.ok) return wrong(read.issue);
  return read.value > 0
    ? { ok: true, value: read.value }
    : { ok: false, wrong: `volume requires more than 0 mL, got ${shown(text)}` };
}

/** A mass above 0, g: "94.8", "94.8 g", "0.4 kg". */
export function readGrams(text: string, zero = false): Typed {
  const typed = text.trim();
  const read = parseAmount(/^[\d.,]+$/.test(typed) ? `${typed} g` : typed);
  if (!read.ok || read.value.kind !== "mass" || (read.value.massG === 0 && !zero)) {
    return {
      ok: false,
      wrong: `weight requires ${zero ? "grams" : "more than 0 g"}, such as 94.8 g, got ${shown(text)}`,
    };
  }
  return { ok: true, value: read.value.massG };
}

const WARMTH = /^([-\u2212+]?)(\d{1,3}(?:[.,]\d+)?)\s*(?:°|deg)?\s*(c|f)?$/i;

/** A temperature, °C: "24", "24 °C", "75 F". Core's formula holds from -20 to 40 °C. */
export function readCelsius(text: string): Typed {
  const found = WARMTH.exec(text.trim());
  const limit = "-20 to 40 °C, or the same in °F";
  if (found === null) return { ok: false, wrong: `temperature requires ${limit}, got ${shown(text)}` };
  const [, sign = "", digits = "", unit = "c"] = found;
  const number = (sign === "" || sign === "+" ? 1 : -1) * Number(digits.replace(",", "."));
  const t = unit.toLowerCase() === "f" ? celsiusFromFahrenheit(fahrenheit(number)) : number;
  if (!(t >= -20 && t <= 40))
    return { ok: false, wrong: `temperature requires ${limit}, got ${shown(text)}` };
  return { ok: true, value: t };
}

/** A plain number from `low` to `high`; a unit may stand behind it. */
export function readNumber(
  text: string,
  what: { readonly name: string; readonly unit: string; readonly low: number; readonly high: number },
): Typed {
  const { name, unit, low, high } = what;
  const found = /^([-\u2212]?)(\d+(?:[.,]\d+)?)\s*[^\d\s]*.*$/.exec(text.trim());
  const value =
    found === null ? Number.NaN : (found[1] === "" ? 1 : -1) * Number((found[2] ?? "").replace(",", "."));
  if (value >= low && value <= high) return { ok: true, value };
  return { ok: false, wrong: `${name} requires ${low} to ${high} ${unit}, got ${shown(text)}` };
}
