import { ATTRIBUTES, type AttributeId } from "@partsproof/core/sensory";
import { z } from "zod";
import { Id, Instant, LongText, OptionalText, ShortText, Version, VolumeMl } from "./fields.ts";
import { OakPiece, OakResult, oakWood, woodIssues } from "./oak.ts";
import { RestAnswer } from "./rest.ts";
import { SECTIONS } from "./strength.ts";
import { WoodSpecies } from "./whiskey.ts";

/** A day of the calendar, such as 2031-05-04. */
const Day = z.iso.date();
const Attribute = z.enum(ATTRIBUTES.map(({ id }) => id) as [AttributeId, ...AttributeId[]]);
const Level = z.number().min(0.5).max(10);

/** The rule that a person sets: the oak comes out when this attribute reaches this level. */
export const PullRule = z.object({ attribute: Attribute, level: Level });
export type PullRule = z.infer<typeof PullRule>;

const ruled = {
  /** Null on glass, where nothing is pulled. */
  pull: PullRule.nullable(),
  /** From which level on the oak leads; null for one and a half above the pull level. */
  leadsAt: z.number().min(0.5).max(12).nullable(),
  /** Attributes that rise and then fall, as tannin does. */
  falling: z.array(Attribute).max(6),
  /** Where the bottle stands; null where nobody knows. */
  celsius: z.number().min(0).max(45).nullable(),
  /** The day of the flight that pours the kept sample beside the batch. */
  flightOn: Day.nullable(),
  note: LongText,
};

/** A sample kept from before, in a vial of its own. */
const SampleDraft = z.object({ label: ShortText, capacityMl: VolumeMl, ml: z.number().min(1).max(500) });

export const RestBegin = z.object({
  kind: z.enum(["glass", "oak"]),
  /** Now, where left out. */
  at: Instant.optional(),
  pull: ruled.pull.default(null),
  leadsAt: ruled.leadsAt.default(null),
  falling: ruled.falling.default([]),
  celsius: ruled.celsius.default(null),
  flightOn: ruled.flightOn.default(null),
  note: ruled.note.default(""),
  sample: SampleDraft.nullable().default(null),
});
export const RestEdit = z.object({
  version: Version,
  pull: ruled.pull.optional(),
  leadsAt: ruled.leadsAt.optional(),
  falling: ruled.falling.optional(),
  celsius: ruled.celsius.optional(),
  flightOn: ruled.flightOn.optional(),
  note: ruled.note.optional(),
});

const wood = {
  species: WoodSpecies.default("not known"),
  /** As its seller says it: "medium toast". */
  toast: OptionalText.default(""),
  /** 1 for new wood, 2 for its second use. */
  use: z.int().min(1).max(5).default(1),
};
export const OakPut = z
  .strictObject({
    ...oakWood,
    ...wood,
    /** When it went in; now, where left out. */
    at: Instant.optional(),
  })
  .superRefine(woodIssues);

/** One piece comes out, or some of several like it; the others stay in. */
export const OakOut = z
  .strictObject({
    /** Of the piece. */
    version: Version,
    /** When it came out; now, where left out. Null: it is in still, as though it had not come out. */
    at: Instant.nullable().optional(),
    /** How many of them; all, where left out. */
    count: z.int().min(1).max(1000).optional(),
    /** Lost with it; leaves the vessel in the ledger. */
    lossMl: z.number().min(0).max(100_000).default(0),
  })
  .superRefine(({ at, count, lossMl }, context) => {
    if (at !== null || (count === undefined && lossMl === 0)) return;
    const [path, input] = count === undefined ? ["lossMl", lossMl] : ["count", count];
    const params = { code: "still_in_whole" };
    context.addIssue({
      code: "custom",
      path: [path],
      message: "a moment at which it came out",
      params,
      input,
    });
  });

/** A check tasting: the words and attributes of any sheet, of one glass. */
const CheckNotes = z.object({ nose: LongText, palate: LongText, finish: LongText });
export const CheckStrength = z.object({
  section: z.enum(SECTIONS),
  attribute: Attribute,
  /** Null takes back what the notes were read to say. */
  strength: z.number().min(0).max(10).nullable(),
});
export type CheckStrength = z.infer<typeof CheckStrength>;
export const CheckDraft = z.object({
  /** Now, where left out. */
  at: Instant.optional(),
  tasterId: Id.nullable().default(null),
  notes: CheckNotes.partial().default({}),
  strengths: z
    .array(CheckStrength)
    .max(SECTIONS.length * ATTRIBUTES.length)
    .default([]),
});

export const PullDraft = z.object({
  version: Version,
  /** Now, where left out. */
  at: Instant.optional(),
  /** Lost in taking the wood out and filtering; it leaves the vessel in the ledger. */
  lossMl: z.number().min(0).max(100_000).default(0),
  /** The ledger says it if set; else it is only noted here. */
  note: LongText.default(""),
});

const OakIn = z.object({
  id: Id,
  version: Version,
  piece: OakPiece.nullable(),
  count: z.int(),
  areaCm2: z.number(),
  grams: z.number().nullable(),
  thicknessCm: z.number().nullable(),
  species: WoodSpecies,
  toast: z.string(),
  use: z.int(),
  /** What the vessel held when it went in. */
  volumeMl: z.number(),
  inAt: Instant,
  outAt: Instant.nullable(),
});

export const Check = z.object({
  id: Id,
  version: Version,
  at: Instant,
  /** Days since the oak went in; since the rest began, on glass. 0 for before. */
  day: z.number(),
  tasterId: Id.nullable(),
  taster: z.string().nullable(),
  notes: CheckNotes,
  strengths: z.array(CheckStrength),
  /** What the notes and strengths come to, 0 to 10, by attribute; read by the household's own words. */
  levels: z.record(z.string(), z.number()),
});
export type Check = z.infer<typeof Check>;

/** A batch's time on glass or on oak. */
export const Rest = z.object({
  id: Id,
  version: Version,
  batchId: Id,
  batchName: z.string(),
  vesselId: Id,
  kind: z.enum(["glass", "oak"]),
  beganAt: Instant,
  /** When the first wood went in; null while there is none. */
  oakInAt: Instant.nullable(),
  ...ruled,
  /** The shortest rest, as the recipe or the batch asks for; when it is over. */
  minimumDays: z.int().nullable(),
  minimumEndsAt: Instant.nullable(),
  /** The sample kept from before, while it is there. */
  sample: z.object({ vesselId: Id, label: z.string(), ml: z.number() }).nullable(),
  /** In the order in which it went in, what is out as well. */
  oak: z.array(OakIn),
  /** All wood that is in, or was until the rest ended, in what the vessel held when it went in; null where there is none. */
  dose: OakResult.nullable(),
  abv20: z.number().nullable(),
  checks: z.array(Check),
  endedAt: Instant.nullable(),
  lossMl: z.number().nullable(),
  cautions: z.array(z.string()),
});
export type Rest = z.infer<typeof Rest>;
export const Rests = z.object({ items: z.array(Rest) });

/** What to believe of a rest now. Of days since the wood went in, and the same as instants. */
export const RestAdvice = z.object({
  restId: Id,
  /** Null where there is nothing to reckon with: on glass, without a rule, before the wood went in. */
  answer: RestAnswer.nullable(),
  /** Why there is none. */
  why: z.string().nullable(),
  /** The attributes of the answer by id, in its order. */
  attributeIds: z.array(z.string()),
  /** A check tasting that was planned for a day which has come. */
  tasteNow: z.boolean(),
  nextTastings: z.array(z.object({ day: z.int(), at: Instant, tells: z.number() })),
  readyFrom: Instant.nullable(),
  readyTo: Instant.nullable(),
  leadsFrom: Instant.nullable(),
  /** What the reckoning leaves out of this rest. */
  remarks: z.array(z.string()),
});
export type RestAdvice = z.infer<typeof RestAdvice>;
