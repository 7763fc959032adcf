import { z } from "zod";
import {
  Account,
  BatchDraft,
  BatchReduction,
  Check,
  Entry,
  Flight,
  FlightDesign,
  GlassNotes,
  GlassCode,
  Guess,
  Id,
  Instant,
  LongText,
  Meaning,
  Money,
  NameId,
  Phrase,
  QuestionId,
  Ranking,
  RecipeFile,
  RecipeVersion,
  REFERENCE_LABEL,
  Rest,
  ResultFile,
  SetAnswer,
  Sha256,
  Sheet,
  SheetStrength,
  ShortText,
  TransferAmount,
  TrialPlan,
  TrialsAsked,
  Version,
  VesselKind,
  VolumeMl,
  Whiskey,
} from "../../protocol/index.ts";

const head = { id: Id, version: Version, createdAt: Instant, updatedAt: Instant };
const notBelowZero = z.number().min(0).max(1e9);

const { abv20: _, proof60F: __, ...whiskeyFacts } = Whiskey.shape;
const { number: ___, createdAt: ____, ...recipeBody } = RecipeVersion.shape;

const taster = z.strictObject({ ...head, name: ShortText, guest: z.boolean().default(false) });
const whiskey = z
  .strictObject({
    ...head,
    ...whiskeyFacts,
    place: whiskeyFacts.place.default(null),
    profile: whiskeyFacts.profile.default(null),
  })
  .refine(({ strength }) => strength.value > 0, { path: ["strength", "value"], message: "more than 0" });
const vessel = z.strictObject({
  ...head,
  kind: VesselKind,
  label: ShortText,
  capacityMl: VolumeMl,
  whiskeyId: Id.nullable(),
  batchId: Id.nullable(),
  priceMinor: Money.nullable(),
  openedAt: Instant.nullable(),
});
const transfer = z.strictObject({
  ...head,
  seq: z.int(),
  at: Instant,
  from: Account,
  to: Account,
  amount: TransferAmount,
  liquid: z
    .strictObject({
      liquidId: z.union([z.literal("water"), Id]),
      ethanolG: notBelowZero,
      waterG: notBelowZero,
      cost: notBelowZero.nullable(),
    })
    .nullable(),
  batchId: Id.nullable(),
  flightId: Id.nullable(),
  note: LongText,
  undoneAt: Instant.nullable(),
});
const recipe = z.strictObject({
  ...head,
  name: ShortText,
  targetWhiskeyId: Id.nullable(),
  latestNumber: Version,
});
const recipeVersion = z.strictObject({
  ...head,
  recipeId: Id,
  number: Version,
  body: z
    .strictObject(recipeBody)
    .refine(({ slots }) => slots.some(({ parts }) => parts > 0), {
      path: ["slots"],
      message: "a part above 0",
    })
    .refine(({ waterTo }) => waterTo?.value !== 0, { path: ["waterTo", "value"], message: "more than 0" }),
});
/** A file that the house itself could not read again would be of no use to it. */
const readsAgain = (schema: z.ZodType, text: string | null): boolean => {
  try {
    return schema.safeParse(JSON.parse(text ?? "")).success;
  } catch {
    return false;
  }
};
const passedFile = z
  .strictObject({
    ...head,
    recipeId: Id,
    number: Version,
    way: z.enum(["in", "out", "back"]),
    sha256: Sha256,
    text: z.string().max(2_000_000).nullable(),
  })
  .refine(({ way, text }) => (way === "out") === (text === null), {
    path: ["text"],
    message: "the text of what came in, none of what went out",
  })
  .refine(({ way, text }) => way === "out" || readsAgain(way === "in" ? RecipeFile : ResultFile, text), {
    path: ["text"],
    message: "a recipe file, or a result file",
  });
const batch = z.strictObject({
  ...head,
  name: ShortText,
  recipeId: Id,
  recipeNumber: Version,
  vesselId: Id,
  madeAt: Instant,
  restDays: BatchDraft.shape.restDays.unwrap(),
  finishedAt: Instant.nullable(),
  note: LongText,
  reduction: z.strictObject(BatchReduction.shape).nullable().default(null),
});
const trialSet = z.strictObject({
  ...head,
  name: ShortText,
  asked: TrialsAsked,
  plan: z.strictObject(TrialPlan.shape),
  made: z.array(z.strictObject({ trial: z.int().min(1), vesselId: Id })),
  madeAt: Instant.nullable(),
  note: LongText,
});
const { pull, leadsAt, falling, celsius, flightOn, kind } = Rest.shape;
const rest = z.strictObject({
  ...head,
  batchId: Id,
  kind,
  beganAt: Instant,
  pull,
  leadsAt,
  falling,
  celsius,
  abv20: z.number().min(0).max(100).nullable(),
  flightOn,
  note: LongText,
  sampleVesselId: Id.nullable(),
  endedAt: Instant.nullable(),
  lossMl: notBelowZero.nullable(),
});
const { id: ______1, thicknessCm: ______2, version: ______3, ...oakIn } = Rest.shape.oak.element.shape;
const oakPiece = z.strictObject({
  ...head,
  restId: Id,
  ...oakIn,
  count: z.int().min(1),
  areaCm2: z.number().positive().max(1e6),
  grams: notBelowZero.nullable(),
  volumeMl: VolumeMl,
});
const { notes: checkNotes, strengths: checkStrengths } = Check.shape;
const checkTasting = z.strictObject({
  ...head,
  restId: Id,
  tasterId: Id.nullable(),
  at: Instant,
  notes: checkNotes,
  strengths: checkStrengths,
});
const { namesOnOffer, targetNameId, pourer, glassCount, pourMl, pouring, state } = Flight.shape;
// Which set a mark is poured for follows from the design.
const { set: _____, likeR: ______, ...mark } = Flight.shape.marks.element.shape;
const flight = z.strictObject({
  ...head,
  name: ShortText,
  pouring,
  state,
  glassCount,
  pourMl,
  namesOnOffer,
  targetNameId,
  pourer,
  marks: z.array(z.strictObject(mark)),
  alcoholAtMostG: notBelowZero,
  pouredAt: Instant.nullable(),
  revealedAt: Instant.nullable(),
  commitment: z.string().max(64).nullable().default(null),
  closing: z
    .strictObject({
      closedAt: z.int(),
      heads: z.array(z.strictObject({ sheet: z.string(), entries: z.int(), hash: z.string() })),
      hash: z.string(),
    })
    .nullable()
    .default(null),
  question: QuestionId.default("which_is_which"),
  design: z.strictObject(FlightDesign.shape).nullable().default(null),
});
const flightKey = z.strictObject({
  ...head,
  flightId: Id,
  opened: z.strictObject({
    glasses: z.array(
      z.strictObject({ vesselId: Id, nameId: NameId, label: z.string(), ethanolG: notBelowZero }),
    ),
    codes: z.array(
      z.strictObject({
        sheetId: Id,
        code: z.union([GlassCode, z.literal(REFERENCE_LABEL)]),
        glass: z.int().min(0).max(15),
        set: z.int().min(1).optional(),
      }),
    ),
    expected: z.int().min(0).max(1).optional(),
    said: z.array(z.string()).optional(),
    nonce: z.string().optional(),
    salts: z.array(z.strictObject({ sheetId: Id, salt: z.string() })).optional(),
  }),
});
const sheetFields = {
  ...head,
  flightId: Id,
  tasterId: Id,
  state: Flight.shape.sheets.element.shape.state,
  order: z.array(GlassCode),
  notes: z.array(GlassNotes),
  guesses: z.array(Guess),
  ranking: Ranking,
  undersides: z.array(z.strictObject({ place: z.int(), mark: z.string() })).nullable(),
  lockedAt: Instant.nullable(),
  entries: z.int().min(0).default(0),
  answers: z.array(SetAnswer).default([]),
  strengths: z.array(SheetStrength).default([]),
  typedBy: Sheet.shape.typedBy.default(null),
};

const entry = z.strictObject({
  ...head,
  flightId: Id,
  sheetId: Id,
  number: z.int().min(1),
  key: z.string().max(64),
  kind: Entry.shape.kind,
  written: z.strictObject({
    notes: Entry.shape.notes,
    guesses: Entry.shape.guesses,
    ranking: Entry.shape.ranking,
    answers: Entry.shape.answers,
    strengths: Entry.shape.strengths,
    typedBy: Entry.shape.typedBy,
  }),
  hash: z.string().max(64).nullable(),
});

const taughtWord = z.strictObject({
  ...head,
  number: z.int().min(1),
  phrase: Phrase,
  means: Meaning.nullable(),
  tasterId: Id.nullable(),
  flightId: Id.nullable(),
  sheetId: Id.nullable(),
  key: z.string().max(64).nullable(),
});

/**
 * The file's tables, in the order in which they are written: stored rows without the household's id, without holds
 * and without hashes of tokens. `flightKey`, `sheet` and `entry` are those of revealed flights only, `taughtWord` those taught in no flight or in one of these; the sheets of the others
 * are in `sealedSheets`, which only the house that wrote it can open.
 */
export const archiveRows = {
  taster,
  whiskey,
  recipe,
  recipeVersion,
  passedFile,
  vessel,
  batch,
  trialSet,
  rest,
  oakPiece,
  checkTasting,
  flight,
  flightKey,
  sheet: z.strictObject(sheetFields),
  entry,
  taughtWord,
  transfer,
  sealedKeys: z.strictObject({ flightId: Id, sealed: z.string().max(1_000_000) }),
  sealedSheets: z.strictObject({ flightId: Id, sealed: z.string().max(8_000_000) }),
} as const;

/** What `sealedSheets` holds under the seal. */
export const SealedSheets = z.strictObject({
  hostTokenHash: z.string(),
  pourerTokenHash: z.string().nullable(),
  sheets: z.array(z.strictObject({ ...sheetFields, tokenHash: z.string().nullable() })),
  entries: z.array(entry).default([]),
  words: z.array(taughtWord).default([]),
});
export type SealedSheets = z.infer<typeof SealedSheets>;

/** What `sealedKeys` holds under a wrapping key. */
export const SealedKeys = z.strictObject({
  row: z.strictObject({ ...head, flightId: Id }).nullable(),
  plain: z.string().nullable(),
  holds: z.array(z.strictObject({ vesselId: Id, ml: z.number().min(0) })),
});
export type SealedKeys = z.infer<typeof SealedKeys>;

export type ArchiveTable = keyof typeof archiveRows;
export type ArchiveRows = { readonly [T in ArchiveTable]: readonly z.infer<(typeof archiveRows)[T]>[] };
export const archiveTables = Object.keys(archiveRows) as readonly ArchiveTable[];
