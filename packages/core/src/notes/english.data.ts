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
import { WORDS } from "./english-words.data.ts";
import type { Language } from "./language.ts";

/** English, British and American. */
export const ENGLISH: Language = {
  flavours: FLAVOURS,
  phrases: [...PHRASES, ...CUES],
  kinds: KINDS,
  words: WORDS,
  leaning: LEANING,
  tails: TAILS,
  ownTails: OWN_TAILS,
  shy: SHY,
  spellings: SPELLINGS,
  shortened: SHORTENED,
  things: THINGS,
  scenery: SCENERY,
  people: PEOPLE,
  deeds: DEEDS,
  told: TOLD,
  turns: TURNS,
  plurals: PLURALS,
  endings: ENDINGS,
  numbers: NUMBERS,
  teaching: TEACHING,
  heard: HEARD,
  slips: SLIPS,
  everyday: EVERYDAY,
  sounds: SOUNDS,
};
