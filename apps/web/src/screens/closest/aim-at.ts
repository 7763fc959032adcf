import { type Aim, NO_AIM, type Shelf } from "../../closest/index.ts";

/** A whiskey as what is sought: what is known of it counts, what is not known does not. */
export function aimAt(shelf: Pick<Shelf, "tastes">, id: string): Aim {
  const values = Object.entries(shelf.tastes.get(id)?.values ?? {});
  return {
    ...NO_AIM,
    from: id,
    profile: Object.fromEntries(
      values.flatMap(([attribute, value]) => (value === null ? [] : [[attribute, value]])),
    ),
  };
}
