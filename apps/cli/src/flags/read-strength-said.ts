import type { AttributeId } from "@partsproof/core/sensory";
import { SECTIONS } from "@partsproof/house/protocol";
import type { Read } from "./flag.ts";
import { readAttribute } from "./read-attribute.ts";
import { readNumber, unread } from "./read-number.ts";
import { readWord } from "./read-text.ts";

export interface StrengthSaid {
  readonly section: (typeof SECTIONS)[number];
  readonly attribute: AttributeId;
  /** Null takes it back. */
  readonly strength: number | null;
}

/** "nose:smoke=6": how strong, 0 to 10; nothing after "=" takes it back. */
export const readStrengthSaid: Read<StrengthSaid> = (text) => {
  const parts = /^([^:]*):(.*)=([^=]*)$/.exec(text.trim());
  const shape = "<section>:<attribute>=<0 to 10>, such as nose:smoke=6";
  if (parts === null) return unread("strength", "strength_unreadable", shape, text);
  const [, where = "", what = "", number = ""] = parts;
  const section = readWord("section", SECTIONS)(where);
  if (!section.ok) return section;
  const attribute = readAttribute(what);
  if (!attribute.ok) return attribute;
  const strength =
    number.trim() === "" ? { ok: true as const, value: null } : readNumber("strength", 0, 10)(number.trim());
  return strength.ok
    ? { ok: true, value: { section: section.value, attribute: attribute.value, strength: strength.value } }
    : strength;
};
