import { ATTRIBUTES } from "@partsproof/core/sensory";

const places: ReadonlyMap<string, number> = new Map(ATTRIBUTES.map(({ id }, place) => [id, place]));

/** In the order of core's list, which keeps families together. */
export const inOrder = (ids: readonly string[]): readonly string[] =>
  ids.toSorted((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0));
