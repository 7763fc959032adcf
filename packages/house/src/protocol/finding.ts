import { z } from "zod";
import { Id, Instant } from "./fields.ts";
import { Alcohol, Flight, GlassNotes, NameOnOffer } from "./flight.ts";
import { AgreementFound, ClosenessFound, SetsFound } from "./found.ts";
import { Chance } from "./chance.ts";
import { NameId } from "./glass.ts";
import { GlassStrength } from "./strength.ts";

export const RevealedGlass = z.object({
  position: z.int(),
  /** The set or round it stood in; null in one row. */
  set: z.int().nullable(),
  code: z.string(),
  /** Index into `glasses` of the finding. */
  glass: z.int(),
  nameId: NameId,
  label: z.string(),
  guessNameId: NameId.nullable(),
  guessLabel: z.string().nullable(),
  /** How sure the taster was of the guess, in whole per cent; null where that was not said. */
  sure: z.int().nullable(),
  right: z.boolean().nullable(),
  /** Within its round where there are rounds. */
  rank: z.number().nullable(),
  notes: GlassNotes.nullable(),
  /** How strong it was in what it tasted of, as said on the sheet. */
  strengths: z.array(GlassStrength),
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
      control: z.boolean(),
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
      /** Who typed it in from paper; null where the taster wrote it. */
      typedBy: z.string().nullable(),
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
  /** `tell_apart` and `changed`; null for the other questions. */
  sets: SetsFound.nullable(),
  /** `how_close`. */
  closeness: ClosenessFound.nullable(),
  /** `agree_with_myself`. */
  agreement: AgreementFound.nullable(),
  /** What this flight can say and what it cannot, in plain sentences. */
  canSay: z.array(z.string()),
  cannotSay: z.array(z.string()),
  /** What the design left unbalanced, with what could not be told before the reveal. */
  designSaid: z.array(z.string()),
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
    "check tasting due",
    "check tasting planned",
    "pull window",
    "flight planned",
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
