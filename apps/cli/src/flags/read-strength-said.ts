import { type AttributeId, ATTRIBUTES } from "@partsproof/core/sensory";
import { SECTIONS } from "@partsproof/house/protocol";
import type { Read } from "./flag.ts";
import { readNumber, unread } from "./read-number.ts";
import { readWord } from "./read-text.ts";

export interface StrengthSaid {
  readonly section: (typeof SECTIONS)[number];
  readonly attribute: AttributeId;
  /** Null takes it back. */
  readonly strength: number | null;
}

const NAMES = ATTRIBUTES.map(({ name }) => name);

/** "nose:smoke=6": how strong, 0 to 10; nothing after "=" takes it back. The attribute by its name or its id. */
export const readStrengthSaid: Read<StrengthSaid> = (text) => {
  const parts = /^([^:]*):(.*)=([^=]*)$/.exec(text.trim());
  const shape = "<section>:<attribute>=<0 to 10>, such as nose:smoke=6";
  if (parts === null) return unread("strength", "strength_unreadable", shape, text);
  const [, where = "", what = "", number = ""] = parts;
  const section = readWord("section", SECTIONS)(where);
  if (!section.ok) return section;
  const byId = ATTRIBUTES.find(({ id }) => id === what.trim());
  const name = byId === undefined ? readWord("attribute", NAMES)(what) : null;
  if (name !== null && !name.ok) return name;
  const attribute = byId ?? ATTRIBUTES.find((one) => name !== null && one.name === name.value);
  if (attribute === undefined) return unread("attribute", "unknown_word", "an attribute", what);
  const strength =
    number.trim() === "" ? { ok: true as const, value: null } : readNumber("strength", 0, 10)(number.trim());
  return strength.ok
    ? { ok: true, value: { section: section.value, attribute: attribute.id, strength: strength.value } }
    : strength;
};
