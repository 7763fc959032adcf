import type { Flight } from "@partsproof/house/protocol";

type Mark = Flight["marks"][number];

export interface PouredSet {
  /** Null: the glasses stand in one row. */
  readonly set: number | null;
  readonly marks: readonly Mark[];
  /** What goes into the glass labelled R, which has no mark beneath. */
  readonly reference: string | null;
}

/** What goes over which mark, set by set or in one row, R first where there is one. */
export function pouredSets({ marks, design, namesOnOffer, targetNameId }: Flight): readonly PouredSet[] {
  const sets = [...new Set(marks.map(({ set }) => set))];
  const target = namesOnOffer.find(({ nameId }) => nameId === targetNameId)?.label ?? null;
  return sets.map((set) => {
    const own = marks.filter((mark) => mark.set === set);
    return {
      set,
      marks: own,
      reference: design.reference
        ? set === null
          ? target
          : (own.find(({ likeR }) => likeR)?.label ?? null)
        : null,
    };
  });
}

/** The places of each set, or of the row; R stands before them where there is one. */
export function placesOf(flight: Flight): readonly {
  readonly set: number | null;
  readonly codes: readonly string[];
  readonly reference: boolean;
}[] {
  const sets = pouredSets(flight);
  let place = 0;
  return sets.map(({ set, marks, reference }) => ({
    set,
    codes: marks.map(() => String((place += 1))),
    reference: reference !== null,
  }));
}

/** What a glass labelled R is ticked off by. */
export const tickOfR = (set: number | null): string => `R${String(set ?? "")}`;
