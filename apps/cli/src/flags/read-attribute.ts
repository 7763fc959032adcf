import { type AttributeId, ATTRIBUTES } from "@partsproof/core/sensory";
import type { Read } from "./flag.ts";
import { unread } from "./read-number.ts";
import { readWord } from "./read-text.ts";

const NAMES = ATTRIBUTES.map(({ name }) => name);

/** An attribute by its name or its id: "orchard fruit" or "fruit.orchard". */
export const readAttribute: Read<AttributeId> = (text) => {
  const byId = ATTRIBUTES.find(({ id }) => id === text.trim());
  if (byId !== undefined) return { ok: true, value: byId.id };
  const name = readWord("attribute", NAMES)(text);
  if (!name.ok) return name;
  const named = ATTRIBUTES.find((one) => one.name === name.value);
  return named === undefined
    ? unread("attribute", "unknown_word", "an attribute", text)
    : { ok: true, value: named.id };
};
