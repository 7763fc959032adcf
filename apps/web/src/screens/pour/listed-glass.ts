import { type PourList, REFERENCE_LABEL } from "@partsproof/house/protocol";

export type ListedGlass = PourList["tasters"][number]["glasses"][number];

/** What a glass is ticked off by: its number, which no other has; one labelled R, by whose it is and its set. */
export const tickOf = (taster: string, { code, set }: Pick<ListedGlass, "code" | "set">): string =>
  code === REFERENCE_LABEL ? `${REFERENCE_LABEL}/${taster.replaceAll(" ", "_")}/${set ?? 0}` : code;

/** A taster's glasses as sets in their order, or as one row. */
export function inSets<G extends { readonly set: number | null }>(
  glasses: readonly G[],
): readonly { readonly set: number | null; readonly glasses: readonly G[] }[] {
  const sets = [...new Set(glasses.map(({ set }) => set))];
  return sets.map((set) => ({ set, glasses: glasses.filter((one) => one.set === set) }));
}

/** Where a bottle goes: the number, or whose R. */
export const intoWords = (taster: string, { code, set }: Pick<ListedGlass, "code" | "set">): string =>
  code === REFERENCE_LABEL ? `${taster}’s R${set === null ? "" : ` of set ${set}`}` : code;
