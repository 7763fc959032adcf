import type { AttributeId } from "@partsproof/core/sensory";
import { ATTRIBUTES } from "@partsproof/core/sensory";
import { WoodSpecies } from "@partsproof/house/protocol";
import type { Read } from "./flag.ts";
import { readAttribute } from "./read-attribute.ts";
import { readNumber, readWhole, unread } from "./read-number.ts";
import { readMass, readMeasured } from "./read-quantity.ts";
import { readStrengthSaid } from "./read-strength-said.ts";
import { readWord } from "./read-text.ts";

/** "<key>=<value>", split at the last or the first "=", each side read by its own rule. */
const readPair =
  <K, V>(
    what: string,
    shape: string,
    key: Read<K>,
    value: Read<V>,
    at: "first" | "last",
  ): Read<readonly [K, V]> =>
  (text) => {
    const cut = at === "first" ? text.indexOf("=") : text.lastIndexOf("=");
    if (cut < 1) return unread(what, `${what}_unreadable`, shape, text);
    const left = key(text.slice(0, cut).trim());
    if (!left.ok) return left;
    const right = value(text.slice(cut + 1));
    return right.ok ? { ok: true, value: [left.value, right.value] } : right;
  };

const anything: Read<string> = (text) => ({ ok: true, value: text });

/** "wood.toasted=6": an attribute and how strong it is, 0 to 10. */
export const readAttributeLevel = readPair(
  "attribute",
  "<attribute>=<0 to 10>, such as wood.toasted=6",
  readWord(
    "attribute",
    ATTRIBUTES.map(({ id }) => id),
  ),
  (text) => readNumber("strength", 0, 10)(text.trim()),
  "last",
);

/** "corn=51": per cent of the mash. */
export const readGrain = readPair(
  "grain",
  "<grain>=<per cent>, such as corn=51",
  anything,
  (text) => readNumber("grain", 0, 100, "%")(text.trim().replace(/\s*%$/, "")),
  "last",
);

/** "smoke=6": how strong a whiskey is in one attribute, 0 to 10; null, which is nothing after "=", that it is not said any more. */
export const readTaste = readPair<AttributeId, number | null>(
  "taste",
  "<attribute>=<0 to 10>, such as smoke=6",
  readAttribute,
  (text) => (text.trim() === "" ? { ok: true, value: null } : readNumber("taste", 0, 10)(text.trim())),
  "last",
);

/** "Barn Door=250ml": how much came out of which vessel. */
export const readVesselAmount = readPair(
  "pour",
  "<vessel>=<amount>, such as jug=250ml",
  anything,
  readMeasured,
  "last",
);

/** "417=smoke, salt": words about a glass. */
export const readGlassText = readPair(
  "note",
  "<glass>=<text>, such as 417=smoke",
  readGlass,
  anything,
  "first",
);

/** "417=80": a score from 0 to 100. */
export const readGlassScore = readPair(
  "score",
  "<glass>=<0 to 100>, such as 417=80",
  readGlass,
  (text) => readNumber("score", 0, 100)(text.trim()),
  "first",
);

/** "417=80": how sure a guess is, in per cent. */
export const readGlassSure = readPair(
  "sure",
  "<glass>=<0 to 100>, such as 417=80",
  readGlass,
  (text) => readWhole("sure", 0, 100)(text.trim()),
  "first",
);

/** "417=nose:smoke=6": how strong a glass is in one attribute. */
export const readGlassStrength = readPair(
  "strength",
  "<glass>=<section>:<attribute>=<0 to 10>, such as 417=nose:smoke=6",
  readGlass,
  readStrengthSaid,
  "first",
);

/** "417=a name on offer"; nothing after "=" takes the guess back. */
export const readGlassName = readPair(
  "guess",
  "<glass>=<name>, such as 417=jug",
  readGlass,
  anything,
  "first",
);

/** "1=417", or the two of one group as "1=417 233": what is picked in a set; nothing after "=" takes it back. */
export const readSetPick = readPair(
  "pick",
  "<set>=<glass>, such as 1=417",
  readWhole("set", 1, 8),
  readGlasses,
  "first",
);

/** "1=417 > 233 > 508": the glasses of a round in order, best first; nothing after "=" takes it back. */
export const readSetOrder = readPair(
  "order",
  '<round>=<glasses>, such as 1="417 > 233"',
  readWhole("round", 1, 2),
  readOrder,
  "first",
);

/** "3=B": the mark found under the glass at that place. */
export const readMark = readPair(
  "mark",
  "<place>=<letter>, such as 3=B",
  readWhole("place", 1, 10),
  readLetter,
  "first",
);

/** "1=440 g": what the scale showed for the first part. */
export const readPouredPart = readPair(
  "poured",
  "<number of the part>=<mass>, such as 1=440",
  readWhole("part", 1, 24),
  readMass,
  "first",
);

/** Glasses with a space between; none at all for none. */
function readGlasses(text: string): ReturnType<Read<readonly string[]>> {
  const codes = text.split(/[\s,]+/).filter((code) => code !== "");
  return codes.every((code) => readGlass(code).ok)
    ? { ok: true, value: codes }
    : unread("pick", "pick_unreadable", "glasses, such as 417 233", text);
}

function readOrder(text: string): ReturnType<Read<readonly (readonly string[])[] | null>> {
  return text.trim() === "" ? { ok: true, value: null } : readRanking(text);
}

/** A mark on an underside. */
function readLetter(text: string): ReturnType<Read<string>> {
  if (/^[A-J]$/i.test(text.trim())) return { ok: true, value: text.trim().toUpperCase() };
  return unread("mark", "mark_unreadable", "a letter from A to J", text);
}

/** A blind code, or the place of a glass when alone. */
function readGlass(text: string): ReturnType<Read<string>> {
  if (/^[1-9]\d{0,2}$/.test(text)) return { ok: true, value: text };
  return unread("glass", "glass_unreadable", "the number on a glass, 1 to 999", text);
}

/** "American oak:bourbon": the wood, and what the cask held before ("nothing" for a virgin cask). */
export const readCask: Read<{ readonly species: WoodSpecies; readonly held: string }> = (text) => {
  const cut = text.indexOf(":");
  const shape = '<wood>:<held before>, such as "American oak:bourbon"';
  if (cut < 1 || text.slice(cut + 1).trim() === "") return unread("cask", "cask_unreadable", shape, text);
  const species = readWord("wood", WoodSpecies.options)(text.slice(0, cut));
  return species.ok
    ? { ok: true, value: { species: species.value, held: text.slice(cut + 1).trim() } }
    : species;
};

/** "2@Lamplighter's Rest": whole parts of a whiskey or batch. */
export const readSlot: Read<{ readonly parts: number; readonly of: string }> = (text) => {
  const cut = text.indexOf("@");
  const of = text.slice(cut + 1).trim();
  if (cut < 1 || of === "")
    return unread("slot", "slot_unreadable", "<parts>@<whiskey>, such as 2@Tollcorn", text);
  const parts = readWhole("parts", 0, 99)(text.slice(0, cut).trim());
  return parts.ok ? { ok: true, value: { parts: parts.value, of } } : parts;
};

/** "417 > 233 = 508": best first, "=" between glasses that are level; "," does for ">". */
export const readRanking: Read<readonly (readonly string[])[]> = (text) => {
  const groups = text.split(/[>,]/).map((group) => group.split("=").map((code) => code.trim()));
  for (const code of groups.flat()) {
    const glass = readGlass(code);
    if (!glass.ok) {
      return unread("rank", "rank_unreadable", 'glasses, best first, such as "417 > 233 = 508"', text);
    }
  }
  return { ok: true, value: groups };
};
