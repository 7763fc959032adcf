import { ATTRIBUTES } from "../sensory/index.ts";

const idOf: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [name.toLowerCase(), id]));
const nameOf: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [id, name]));

/** "stone fruit" is fruit.stone; in quotes, or unknown here, a name stands for itself. */
export const attributeOf = ({ name, quoted }: { readonly name: string; readonly quoted: boolean }): string =>
  quoted ? name : (idOf.get(name.toLowerCase()) ?? name);

/** The name an attribute has in a rule, null where it has none of its own. */
export const attributeName = (id: string): string | null => nameOf.get(id) ?? null;

/** True where a bare name would be read as another attribute. */
export const standsForAnother = (id: string): boolean => idOf.has(id.toLowerCase());
