/** A result on its way to a recipe or to the scale: parts by volume with their strengths, perhaps water to a strength. */
export interface Carried {
  readonly parts: readonly { readonly parts: number; readonly abv20: number }[];
  /** Strength to bring it to with water, % vol. */
  readonly waterTo: number | null;
  /** Volume at the end, mL. */
  readonly finalMl: number | null;
}

const MOST_PARTS = 12;
const digits = (x: number): string => String(Number(x.toFixed(2)));

/** As the query of an address: "parts=2@62.4,1@46&water=46&ml=700". */
export function carriedText({ parts, waterTo, finalMl }: Carried): string {
  const query = [`parts=${parts.map((one) => `${digits(one.parts)}@${digits(one.abv20)}`).join(",")}`];
  if (waterTo !== null) query.push(`water=${digits(waterTo)}`);
  if (finalMl !== null) query.push(`ml=${digits(finalMl)}`);
  return query.join("&");
}

const number = (text: string | null | undefined, low: number, high: number): number | null => {
  if (text === null || text === undefined || !/^\d+(\.\d+)?$/.test(text)) return null;
  const value = Number(text);
  return value >= low && value <= high ? value : null;
};

/** Reads an address; null where it carries nothing that can be read. */
export function carriedFrom(query: URLSearchParams): Carried | null {
  const written = (query.get("parts") ?? "").split(",").filter((text) => text !== "");
  const parts = written.flatMap((text) => {
    const [amount, strength] = text.split("@", 2);
    const read = { parts: number(amount, 0.01, 100_000), abv20: number(strength, 0, 100) };
    return read.parts === null || read.abv20 === null ? [] : [{ parts: read.parts, abv20: read.abv20 }];
  });
  if (parts.length === 0 || parts.length < written.length || parts.length > MOST_PARTS) return null;
  return { parts, waterTo: number(query.get("water"), 0, 100), finalMl: number(query.get("ml"), 1, 100_000) };
}
