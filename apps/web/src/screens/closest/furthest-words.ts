import { type Aim, type Shown, weightOf } from "../../closest/index.ts";

/** Where a recipe is furthest from what was sought, as a sentence. */
export function furthestWords(
  aim: Pick<Aim, "profile" | "weights" | "from">,
  counted: readonly string[],
  predicted: Shown["predicted"],
  nameOf: (attribute: string) => string,
): string {
  let worst: { readonly attribute: string; readonly off: number; readonly cost: number } | null = null;
  for (const [n, attribute] of counted.entries()) {
    const sought = aim.profile[attribute];
    const tastes = predicted[n];
    if (sought === undefined || tastes === undefined) continue;
    const off = tastes - sought;
    const cost = weightOf(aim, attribute) * off * off;
    if (worst === null || cost > worst.cost) worst = { attribute, off, cost };
  }
  if (worst === null || Math.abs(worst.off) < 0.05) return "It is right in everything that counts";
  const by = Math.abs(worst.off).toFixed(1);
  return `What costs most: ${nameOf(worst.attribute)}, ${by} ${worst.off < 0 ? "too little" : "too much"}`;
}
