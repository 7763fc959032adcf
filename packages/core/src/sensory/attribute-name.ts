import { ATTRIBUTES } from "./attributes.data.ts";

const names: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [id, name]));

/**
 * What people call an attribute; an id that is none stands for itself.
 *
 * @example attributeName("fruit.stone") // "stone fruit"
 */
export const attributeName = (id: string): string => names.get(id) ?? id;
