import { type Aim, NO_AIM, type Shelf } from "../../closest/index.ts";

/** A whiskey as what is sought: what is known of it counts, what is not known does not. */
export function aimAt(shelf: Pick<Shelf, "tastes">, id: string): Aim {
  const said = Object.entries(shelf.tastes.get(id)?.values ?? {});
  return {
    ...NO_AIM,
    from: id,
    profile: Object.fromEntries(
      said.flatMap(([attribute, one]) => (one === null ? [] : [[attribute, one.value]])),
    ),
  };
}
