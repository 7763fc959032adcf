import type { NextThing } from "@partsproof/house/protocol";

/** Where to do the next thing, and what the way there is called. */
export function nextLink(
  household: string,
  thing: NextThing,
): { readonly to: string; readonly label: string } {
  const base = `/h/${household}`;
  const { id } = thing.subject;
  switch (thing.kind) {
    case "empty shelf":
      return { to: `${base}/shelf/add`, label: "Add a bottle" };
    case "no recipe":
      return { to: `${base}/recipes/new`, label: "Write a recipe" };
    case "no batch":
      return {
        to: id === null ? `${base}/batches/new` : `${base}/batches/new?recipe=${id}`,
        label: "Make a batch",
      };
    case "batch rested":
    case "batch resting":
      return { to: id === null ? `${base}/batches` : `${base}/batches/${id}`, label: "See the batch" };
    case "check tasting due":
    case "check tasting planned":
    case "pull window":
    case "flight planned":
      return { to: id === null ? `${base}/batches` : `${base}/batches/${id}/rest`, label: "See its rest" };
    case "flight to pour":
    case "sheet not locked":
    case "undersides to enter":
    case "flight not revealed":
      return { to: id === null ? `${base}/flights` : `${base}/flights/${id}`, label: "Go to the flight" };
    case "bottle low":
      return { to: id === null ? `${base}/shelf` : `${base}/shelf/vessels/${id}`, label: "See the bottle" };
  }
}
