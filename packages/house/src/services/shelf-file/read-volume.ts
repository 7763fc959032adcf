import { parseVolume } from "@partsproof/core/quantity";
import { type Cell, is, not, plainNumber } from "./cell.ts";

const ML: Readonly<Record<string, number>> = { ml: 1, cl: 10, l: 1000, oz: 29.5735295625 };
/** 100 litres, as the house takes. */
const MOST_ML = 100_000;

/** A bottle's size: its own unit, else the heading's, else by its size: up to 5 is litres, up to 100 cl, above mL. Common practice, no source. */
export function readVolume(text: string, unit: string | null): Cell<number> {
  const value = plainNumber(text);
  if (value === null) {
    const own = parseVolume(text.replace(/\bmls?\b/iu, "ml").trim());
    return own.ok && own.value > 0
      ? within(own.value)
      : not("volume_unreadable", "a size such as 700 ml, 70 cl, 0,7 L or 25.4 oz");
  }
  const size = unit === null ? undefined : ML[unit];
  if (size !== undefined) return within(value * size);
  if (value <= 5) return within(value * 1000, "L");
  return value <= 100 ? within(value * 10, "cl") : within(value, "mL");
}

function within(ml: number, taken?: string): Cell<number> {
  // A size is written in steps no finer than a tenth of a millilitre; 0.7 × 1000 is not quite 700.
  const round = Number(ml.toFixed(3));
  if (!(round > 0 && round <= MOST_ML))
    return not("volume_out_of_range", `more than 0 and at most ${MOST_ML} mL`);
  return is(round, taken === undefined ? undefined : `${taken}: ${round} mL`);
}

/** How much is left: a share of the bottle ("60 %", "1/2", "full") or a volume. A bare number of 1 to 100 could be either, and is asked for. */
export function readLeft(text: string, unit: string | null, bottleMl: number): Cell<number> {
  const said = text.trim().toLowerCase();
  if (/^(?:full|voll|sealed|plein|new)$/u.test(said)) return is(bottleMl, `${bottleMl} mL`);
  if (/^(?:empty|leer|vide)$/u.test(said)) return is(0, "0 mL");
  const words: Readonly<Record<string, number>> = {
    half: 0.5,
    quarter: 0.25,
    "three quarters": 0.75,
    "½": 0.5,
    "¼": 0.25,
    "¾": 0.75,
  };
  const fraction = /^(\d{1,2})\s*\/\s*(\d{1,2})$/u.exec(said);
  const share = words[said] ?? (fraction ? Number(fraction[1]) / Number(fraction[2]) : null);
  if (share !== null) return ofBottle(share, bottleMl);
  const per = /^([\d.,]+)\s*%$/u.exec(said);
  const percent = plainNumber(per?.[1] ?? said);
  if (percent !== null && (per || unit === "%")) return ofBottle(percent / 100, bottleMl);
  if (percent === 0) return is(0);
  const bare = plainNumber(said);
  if (bare !== null && unit === null) {
    if (bare > 0 && bare <= 1) return ofBottle(bare, bottleMl);
    if (bare <= 100) return not("left_either", `"${text} %" or "${text} ml": this could be either`);
  }
  const read = readVolume(text, unit);
  if (!read.ok) return not("left_unreadable", "what is left such as 60 %, 1/2, full or 350 ml");
  return read.value <= bottleMl ? read : not("left_over_bottle", `at most the bottle's ${bottleMl} mL`);
}

function ofBottle(share: number, bottleMl: number): Cell<number> {
  const ml = Number((share * bottleMl).toFixed(3));
  return share >= 0 && share <= 1 ? is(ml, `${ml} mL`) : not("left_over_bottle", "0 to 100 % of the bottle");
}
