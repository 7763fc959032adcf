import { z } from "zod";
import { Id, Instant, LongText, ShortText, Version } from "./fields.ts";
import { GlassCode, MOST_GLASSES_EACH, NameId, Ranking } from "./glass.ts";
import {
  FlightDesign,
  MOST_SETS,
  questionDraft,
  QuestionId,
  SetAnswer,
  SheetAsks,
  SheetSet,
} from "./question.ts";
import { SheetStrength, StrengthsEdit } from "./strength.ts";

export const FlightDraft = z.object({
  name: ShortText,
  /** `someone else`: a pourer who does not taste pours by the pourer's page. `alone`: undersides are marked and the glasses mixed up. */
  pouring: z.enum(["someone else", "alone"]),
  ...questionDraft,
  /** The vessel of each glass, in any order; a vessel named twice is a repeat. `tell_apart` and `changed`: the two. */
  glasses: z
    .array(z.object({ vesselId: Id }))
    .min(2)
    .max(16),
  /** Names offered that are in no glass. */
  distractors: z.array(NameId).max(6).default([]),
  /** The name the blends try to come close to, if it is in the flight; `how_close`: needed, and in a glass. */
  targetNameId: NameId.nullable().default(null),
  /** Millilitres into each glass of each taster. */
  pourMl: z.number().min(1).max(60),
  tasterIds: z.array(Id).max(12),
  /** Seats besides, that guests take and name themselves; with the tasters 1 to 12. */
  seats: z.int().min(0).max(12).default(0),
  /** Who pours; needed unless alone, and none of the tasters. */
  pourer: ShortText.nullable().default(null),
});
export type FlightDraft = z.infer<typeof FlightDraft>;

export const NameOnOffer = z.object({ nameId: NameId, label: z.string(), count: z.int() });
export const Alcohol = z.object({ grams: z.number(), usStandardDrinks: z.number(), ukUnits: z.number() });

/** Everything about a flight that gives nothing away. */
export const Flight = z.object({
  id: Id,
  version: Version,
  name: ShortText,
  pouring: z.enum(["someone else", "alone"]),
  state: z.enum(["pouring", "tasting", "revealed", "called off"]),
  question: QuestionId,
  design: FlightDesign,
  /** For each taster, those labelled "R" included. */
  glassCount: z.int(),
  pourMl: z.number(),
  namesOnOffer: z.array(NameOnOffer),
  targetNameId: NameId.nullable(),
  pourer: z.string().nullable(),
  /** One entry a taster; `free` until its link is taken. */
  sheets: z.array(
    z.object({
      sheetId: Id,
      tasterId: Id,
      taster: z.string(),
      state: z.enum(["free", "open", "locked", "closed"]),
      lockedAt: Instant.nullable(),
    }),
  ),
  /** Once poured: whose sheets the reveal waits for; a seat that nobody has taken is `empty`. */
  waitingFor: z.array(z.object({ sheetId: Id, taster: z.string(), empty: z.boolean() })),
  /** Alone only, and no secret: which underside mark was poured with what. */
  marks: z.array(
    z.object({
      mark: z.string(),
      nameId: NameId,
      label: z.string(),
      vesselId: Id,
      /** The set it is poured for, from 1; null in one row. The sets change places among themselves before they are tasted. */
      set: z.int().nullable(),
      /** Duo-trio: the glass labelled "R" of this set holds the same. */
      likeR: z.boolean(),
    }),
  ),
  /** Alone only: whether the undersides were entered after the lock. */
  undersidesEntered: z.boolean(),
  /** At most, per taster, whichever of the names on offer are poured. */
  alcoholAtMost: Alcohol,
  createdAt: Instant,
  pouredAt: Instant.nullable(),
  revealedAt: Instant.nullable(),
  /** The promise of the key (docs/decisions/0007): 64 hexadecimal digits that every phone stores at once. */
  commitment: z.string().nullable(),
  /** One digest over all sheets once the last is shut, before the key is opened: stored likewise. */
  closing: z.string().nullable(),
});
export type Flight = z.infer<typeof Flight>;

/** The two tokens are shown this once. The house keeps their hashes only. */
export const FlightMade = z.object({
  flight: Flight,
  /** Closes sheets, reveals early, calls off, hands a sheet to another phone. */
  hostToken: z.string(),
  /** Opens the pourer's page; null when alone. Give it to the pourer and to no taster. */
  pourerToken: z.string().nullable(),
});
export type FlightMade = z.infer<typeof FlightMade>;

/** The pourer's page: what goes into which coded glass. */
export const PourList = z.object({
  flightId: Id,
  pourMl: z.number(),
  totals: z.array(z.object({ vesselId: Id, label: z.string(), ml: z.number() })),
  tasters: z.array(
    z.object({
      taster: z.string(),
      glasses: z.array(
        z.object({
          /** 1, 2, … where the glasses stand in sets; null in one row. */
          set: z.int().nullable(),
          /** That of the taster's sheet; 0 for a glass labelled "R", which stands before its set or the row. */
          position: z.int(),
          code: z.string(),
          vesselId: Id,
          label: z.string(),
        }),
      ),
    }),
  ),
});
export type PourList = z.infer<typeof PourList>;

export const GlassNotes = z.object({
  code: GlassCode,
  first: z.object({ nose: LongText, palate: LongText, finish: LongText }),
  second: z.object({ nose: LongText, palate: LongText, finish: LongText }),
  /** 0 to 100, if wanted. */
  score: z.number().min(0).max(100).nullable(),
});
export type GlassNotes = z.infer<typeof GlassNotes>;
export const Guess = z.object({
  code: GlassCode,
  nameId: NameId.nullable(),
  /** How sure that the name is right, in whole per cent; left out where that is not said. */
  sure: z.int().min(0).max(100).optional(),
});

export const SheetEdit = z.object({
  version: Version,
  /** Only the glasses named are replaced. */
  notes: z.array(GlassNotes).max(MOST_GLASSES_EACH).optional(),
  guesses: z.array(Guess).max(12).optional(),
  ranking: Ranking.optional(),
  /** Only the sets named are replaced. */
  answers: z.array(SetAnswer).max(MOST_SETS).optional(),
  /** How strong a glass is in what it tastes of. Only those named are replaced; null takes one back. */
  strengths: StrengthsEdit.optional(),
  /** Who typed this in from a paper sheet. Left out: the taster wrote it. */
  typedBy: ShortText.optional(),
});
export type SheetEdit = z.infer<typeof SheetEdit>;

export const Sheet = z.object({
  id: Id,
  version: Version,
  flightId: Id,
  flightName: z.string(),
  flightState: Flight.shape.state,
  pouring: Flight.shape.pouring,
  question: QuestionId,
  /** What the taster is asked, in a sentence. */
  task: z.string(),
  asks: SheetAsks,
  /** `how_close`: the name of the target. */
  target: z.string().nullable(),
  /** `how_close`: a glass of it labelled "R" stands before the others. */
  reference: z.boolean(),
  tasterId: Id,
  taster: z.string(),
  state: z.enum(["free", "open", "locked", "closed"]),
  /** In the order to taste. */
  glasses: z.array(z.object({ position: z.int(), code: GlassCode })),
  /** The same glasses set by set, where the question is asked in sets; else empty. */
  sets: z.array(SheetSet),
  /** Empty where no guess is asked. */
  namesOnOffer: z.array(NameOnOffer),
  notes: z.array(GlassNotes),
  /** In the order of the glasses, passes, sections and attributes. */
  strengths: z.array(SheetStrength),
  guesses: z.array(Guess),
  ranking: Ranking,
  /** Who typed in the last of it that came from paper; null where the taster wrote all of it. */
  typedBy: z.string().nullable(),
  alcoholAtMost: Alcohol,
  undersidesEntered: z.boolean(),
  lockedAt: Instant.nullable(),
  updatedAt: Instant,
  /** The number of the last entry on it: what the next one comes after. */
  entries: z.int(),
});
export type Sheet = z.infer<typeof Sheet>;

/** Taking a sheet needs the taster's word on legal age. */
export const SheetTake = z.object({ ofLegalAge: z.literal(true) });
export const SheetTaken = z.object({ sheet: Sheet, token: z.string() });

/** Alone, after the lock: the mark found under the glass at each place. */
export const Undersides = z.object({
  marks: z.array(z.object({ place: z.int().min(1).max(10), mark: z.string().regex(/^[A-J]$/) })).max(10),
});
export const RevealDraft = z.object({
  /** Close the sheets that are not locked; needs the host's token. */
  closeOpenSheets: z.boolean().default(false),
});
