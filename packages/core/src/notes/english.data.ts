import { FLAVOURS } from "./english-flavours.data.ts";
import { CUES, KINDS } from "./english-cues.data.ts";
import { LEANING, OWN_TAILS, PHRASES, SHY, TAILS, TURNS } from "./english-grammar.data.ts";
import {
  DEEDS,
  PEOPLE,
  SCENERY,
  SHORTENED,
  SPELLINGS,
  TEACHING,
  THINGS,
  TOLD,
} from "./english-things.data.ts";
import { ENDINGS, NUMBERS, PLURALS } from "./english-endings.data.ts";
import { EVERYDAY, HEARD, SLIPS, SOUNDS } from "./english-slips.data.ts";
import { WEIGHING } from "./english-weighing.data.ts";
import { WORDS } from "./english-words.data.ts";
import type { Language } from "./language.ts";

/** English, British and American. Compressed, like stands near like: the order is worth half a kilobyte. */
export const ENGLISH: Language = {
  phrases: [...PHRASES, ...CUES],
  spellings: SPELLINGS,
  kinds: KINDS,
  teaching: TEACHING,
  numbers: NUMBERS,
  words: WORDS,
  shortened: SHORTENED,
  turns: TURNS,
  endings: ENDINGS,
  plurals: PLURALS,
  heard: HEARD,
  told: TOLD,
  scenery: SCENERY,
  deeds: DEEDS,
  weighing: WEIGHING,
  ownTails: OWN_TAILS,
  things: THINGS,
  tails: TAILS,
  shy: SHY,
  people: PEOPLE,
  slips: SLIPS,
  flavours: FLAVOURS,
  everyday: EVERYDAY,
  leaning: LEANING,
  sounds: SOUNDS,
};
