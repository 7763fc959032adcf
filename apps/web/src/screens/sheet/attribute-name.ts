import { ATTRIBUTES } from "@partsproof/core/sensory";

const NAMES: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [id, name]));

/** What people call an attribute: "smoke". */
export const attributeName = (id: string): string => NAMES.get(id) ?? id;
