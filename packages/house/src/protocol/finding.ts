import { z } from "zod";
import { Id, Instant } from "./fields.ts";
import { Alcohol, Flight, GlassNotes, NameId, NameOnOffer } from "./flight.ts";

/** A probability with the words for it and the method that gave it. */
export const Chance = z.object({
  p: z.number(),
  /** Exact fraction where there is one, such as "11/120". */
  fraction: z.string().nullable(),
  words: z.string(),
  method: z.string(),
});
export type Chance = z.infer<typeof Chance>;

export const RevealedGlass = z.object({
  position: z.int(),
  code: z.string(),
  /** Index into `glasses` of the finding. */
  glass: z.int(),
  nameId: NameId,
  label: z.string(),
  guessNameId: NameId.nullable(),
  guessLabel: z.string().nullable(),
  right: z.boolean().nullable(),
  rank: z.number().nullable(),
  notes: GlassNotes.nullable(),
});

/** What the glasses said. Exists only after the reveal. */
export const Finding = z.object({
  flight: Flight,
  /** Says the finding, not the variable. */
  headline: z.string(),
  namesOnOffer: z.array(NameOnOffer),
  /** The glasses of the flight, one entry a pour, repeats apart. */
  glasses: z.array(
    z.object({
      glass: z.int(),
      nameId: NameId,
      label: z.string(),
      /** "first pour", "second pour" where a name was poured more than once, else "". */
      pour: z.string(),
      target: z.boolean(),
      meanRank: z.number().nullable(),
      rankSum: z.number().nullable(),
      meanScore: z.number().nullable(),
      codes: z.array(z.object({ tasterId: Id, code: z.string() })),
    }),
  ),
  sheets: z.array(
    z.object({
      sheetId: Id,
      tasterId: Id,
      taster: z.string(),
      state: Flight.shape.sheets.element.shape.state,
      lockedAt: Instant.nullable(),
      glasses: z.array(RevealedGlass),
      guessed: z.int(),
      right: z.int(),
      /** How likely that many right, or more, by guessing at random from the names on offer; null where nothing was guessed. */
      luck: Chance.nullable(),
      ranking: z.array(z.array(z.string())).nullable(),
    }),
  ),
  pooledGuesses: z.object({ guessed: z.int(), right: z.int(), luck: Chance }).nullable(),
  ranks: z
    .object({
      sheetsCounted: z.int(),
      statistic: z.number(),
      df: z.int(),
      kendallW: z.number(),
      chance: Chance,
      sentence: z.string(),
    })
    .nullable(),
  /** Why some sheets or the test are left out, in plain words. */
  leftOut: z.array(z.string()),
  alcoholPerTaster: Alcohol,
});
export type Finding = z.infer<typeof Finding>;

export const FindingLine = z.object({
  flightId: Id,
  name: z.string(),
  revealedAt: Instant,
  tasters: z.int(),
  glasses: z.int(),
  headline: z.string(),
});
export type FindingLine = z.infer<typeof FindingLine>;

/** What is next: the front page. */
export const NextThing = z.object({
  kind: z.enum([
    "empty shelf",
    "no recipe",
    "no batch",
    "batch rested",
    "batch resting",
    "flight to pour",
    "sheet not locked",
    "undersides to enter",
    "flight not revealed",
    "bottle low",
  ]),
  text: z.string(),
  /** When it became due or will be. */
  at: Instant.nullable(),
  subject: z.object({ kind: z.enum(["shelf", "recipe", "batch", "flight", "vessel"]), id: Id.nullable() }),
});
export type NextThing = z.infer<typeof NextThing>;
