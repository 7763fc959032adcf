const SHAPE = /^([+\-\u2212]?)(\d+(?:[.,]\d+)?|[.,]\d+)\s*(.*)$/su;
const THOUSANDS_OR_DECIMAL = /^[1-9]\d{0,2},\d{3}$/;

/**
 * Splits "62,4 % vol" into 62.4 and "% vol" (lower case, single spaces). Null when the text does not start with a plain
 * decimal number. A comma is a decimal comma; "1,000" could be read two ways, so it is refused as "ambiguous".
 */
export function numberAndUnit(
  text: string,
): { readonly value: number; readonly unit: string } | "ambiguous" | null {
  const parts = SHAPE.exec(text.trim());
  if (parts === null) return null;
  const [, sign = "", digits = "", rest = ""] = parts;
  if (THOUSANDS_OR_DECIMAL.test(digits)) return "ambiguous";
  const size = Number(digits.replace(",", "."));
  const unit = rest.trim().toLowerCase().replace(/\s+/gu, " ");
  return { value: sign === "" || sign === "+" ? size : -size, unit };
}
