import type { Cellar } from "../../cellar/index.ts";
import { BLANK, type TypedRecipe } from "./recipe-typed.ts";

const LINE = /^([1-9]\d?)\*([0-9a-z]{26})$/;

/** A found recipe in an address, "found=3*id,1*id&towards=id", as a recipe; null where it carries none that can be read. */
export function fromClosest(
  query: URLSearchParams,
  cellar: Pick<Cellar, "stocks" | "whiskeys">,
): TypedRecipe | null {
  const written = query.get("found")?.split(",") ?? [];
  const lines = written.map((text) => LINE.exec(text));
  if (lines.length === 0 || lines.length > 12) return null;
  const slots = lines.map((line, i) => ({
    id: i + 1,
    parts: Number(line?.[1]),
    key: `whiskey:${line?.[2] ?? ""}`,
  }));
  if (!slots.every(({ key }) => cellar.stocks.has(key))) return null;
  const target = cellar.whiskeys.find(({ id }) => id === query.get("towards"));
  return {
    ...BLANK,
    name: target === undefined ? "" : `Towards ${target.name}`,
    target: target?.id ?? "",
    slots,
  };
}
