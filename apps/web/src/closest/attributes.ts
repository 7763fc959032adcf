import { ATTRIBUTES } from "@partsproof/core/sensory";

const names: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [id, name]));
const places: ReadonlyMap<string, number> = new Map(ATTRIBUTES.map(({ id }, place) => [id, place]));

/** An attribute's id as words: "fruit.stone" is "stone fruit". */
export const attributeName = (id: string): string => names.get(id) ?? id;

/** In the order of core's list, which keeps families together. */
export const inOrder = (ids: readonly string[]): readonly string[] =>
  ids.toSorted((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0));
