import { parseStrength } from "@partsproof/core/quantity";
import type { StatedStrength } from "../../protocol/index.ts";
import { type Cell, is, not, plainNumber } from "./cell.ts";

/** Above this no bottled whiskey is % vol, and below it none is proof: between, a bare number alone says neither. Common practice, no source. */
const MOST_ABV = 75;
const LEAST_PROOF = 100;

/**
 * A strength: its own unit, else the heading's or what was told, else by its size: 0.43 is a share (as tables keep 43 %), up to 75 is % vol, above 100
 * is proof. From 75 to 100 it could be either, and is asked for.
 */
export function readStrength(text: string, unit: string | null): Cell<StatedStrength> {
  const value = plainNumber(text);
  if (value === null) {
    const own = parseStrength(
      text
        .replace(/^[~≈]/u, "")
        .replaceAll(/\s*[°º]\s*/gu, " ")
        .trim(),
    );
    if (own.ok) return own.value.value > 0 ? is({ basis: own.value.basis, value: own.value.value }) : zero;
    if (own.issue.code === "strength_out_of_range") return not("strength_out_of_range", own.issue.limit);
    return not("strength_unreadable", "a strength such as 46 %, 46,3 % vol or 92 proof");
  }
  if (value <= 0) return zero;
  if (unit === "proof") return stated("proof60F", value);
  if (value < 1)
    return stated("abv20", Number((value * 100).toFixed(4)), `${Number((value * 100).toFixed(4))} % vol`);
  if (unit === "%")
    return value > MOST_ABV + 20 ? stated("proof60F", value, `${value} proof`) : stated("abv20", value);
  if (value <= MOST_ABV) return stated("abv20", value, `${value} % vol`);
  if (value > LEAST_PROOF) return stated("proof60F", value, `${value} proof`);
  return not("strength_either", `"${value} %" or "${value} proof": this could be either`);
}

const zero = not("strength_zero", "a strength above 0");

function stated(basis: StatedStrength["basis"], value: number, guessed?: string): Cell<StatedStrength> {
  const most = basis === "abv20" ? 100 : 200;
  return value <= most
    ? is({ basis, value }, guessed)
    : not("strength_out_of_range", basis === "abv20" ? "at most 100 % vol" : "at most 200 proof");
}
