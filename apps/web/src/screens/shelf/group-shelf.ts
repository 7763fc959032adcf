import type { Vessel, Whiskey } from "@partsproof/house/protocol";

export interface OnShelf {
  readonly whiskey: Whiskey;
  readonly bottles: readonly Vessel[];
  readonly leftMl: number;
}

export type Show = "on the shelf" | "open" | "all";

export interface Shelf {
  readonly groups: readonly { readonly kind: Whiskey["kind"]; readonly rows: readonly OnShelf[] }[];
  /** Vessels that are no shop bottle. */
  readonly others: readonly Vessel[];
}

const KINDS: readonly Whiskey["kind"][] = [
  "malt",
  "pot still",
  "rye",
  "wheat",
  "corn",
  "bourbon",
  "grain",
  "blend",
  "other",
];

const left = (vessel: Vessel): number => vessel.contents.volumeMl;
/** Less than a drop is an empty bottle. */
const DROP_ML = 0.05;

/** The shelf in the order it is shown: by kind, then by maker and name; bottles opened first. */
export function groupShelf(
  whiskeys: readonly Whiskey[],
  vessels: readonly Vessel[],
  show: Show,
  search: string,
): Shelf {
  const wanted = search.trim().toLowerCase();
  const matches = (text: string): boolean => text.toLowerCase().includes(wanted);
  const rows = whiskeys.flatMap((whiskey): OnShelf[] => {
    if (!matches(`${whiskey.maker} ${whiskey.name} ${whiskey.release}`)) return [];
    const bottles = vessels
      .filter((vessel) => vessel.kind === "bottle" && vessel.whiskeyId === whiskey.id)
      .filter((vessel) => show === "all" || left(vessel) > DROP_ML)
      .filter((vessel) => show !== "open" || !vessel.sealed)
      .toSorted((a, b) => Number(a.sealed) - Number(b.sealed) || left(a) - left(b));
    if (bottles.length === 0 && show !== "all") return [];
    return [{ whiskey, bottles, leftMl: bottles.reduce((sum, bottle) => sum + left(bottle), 0) }];
  });
  const order = new Intl.Collator("en");
  const name = ({ whiskey }: OnShelf): string => `${whiskey.maker} ${whiskey.name} ${whiskey.release}`;
  return {
    groups: KINDS.flatMap((kind) => {
      const ofKind = rows.filter((row) => row.whiskey.kind === kind);
      return ofKind.length === 0
        ? []
        : [{ kind, rows: ofKind.toSorted((a, b) => order.compare(name(a), name(b))) }];
    }),
    others: vessels
      .filter((vessel) => vessel.kind !== "bottle" && matches(vessel.label))
      .filter((vessel) => show !== "open" || left(vessel) > DROP_ML)
      .toSorted((a, b) => order.compare(a.label, b.label)),
  };
}
