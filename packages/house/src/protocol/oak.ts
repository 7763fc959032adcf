import { z } from "zod";
import { VolumeMl } from "./fields.ts";
import { MassG } from "./reckon.ts";

const Cm = z.number().min(0.01).max(200);
const Sides = z.tuple([Cm, Cm, Cm]);

/** A piece of oak as it is measured, in centimetres. */
export const OakPiece = z.discriminatedUnion("shape", [
  z.strictObject({ shape: z.literal("stick"), cm: Sides }),
  z.strictObject({ shape: z.literal("stave"), cm: Sides }),
  z.strictObject({ shape: z.literal("cube"), cm: Sides }),
  /** Loose: what one measures, and what all weigh. */
  z.strictObject({ shape: z.literal("chips"), cm: Sides, grams: MassG }),
  z.strictObject({
    shape: z.literal("spiral"),
    outer: Cm,
    core: Cm,
    fin: Cm,
    pitch: Cm,
    length: Cm,
  }),
]);
export type OakPiece = z.infer<typeof OakPiece>;

const AreaCm2 = z.number().min(0.01).max(10_000);

/** Wood: `areaCm2`, or the pieces it is worked out from. */
export const oakWood = {
  areaCm2: AreaCm2.optional(),
  piece: OakPiece.optional(),
  /** How many of the piece. */
  count: z.int().min(1).max(1000).optional(),
  /** What the wood weighs; else worked out from its size, where that is known. */
  grams: MassG.optional(),
};
type OakWood = z.output<z.ZodObject<typeof oakWood>>;

/** What cannot be true of wood together. */
export function woodIssues(
  { areaCm2, piece, count, grams }: OakWood,
  context: z.RefinementCtx<OakWood>,
): void {
  const wrong = (path: string, code: string, message: string, input: unknown): void =>
    context.addIssue({ code: "custom", path: [path], message, params: { code }, input });
  if ((areaCm2 === undefined) === (piece === undefined))
    wrong("areaCm2", "area_or_piece", "either areaCm2 or piece, and not both", areaCm2 ?? null);
  if (piece === undefined && count !== undefined)
    wrong("count", "count_without_piece", "a piece to count", count);
  if (piece?.shape === "chips" && count !== undefined)
    wrong("count", "chips_are_weighed", "no count beside chips: their grams say how many", count);
  if (piece?.shape === "chips" && grams !== undefined)
    wrong("grams", "chips_are_weighed", "the grams inside the chips alone", grams);
  if (piece?.shape === "spiral" && piece.core >= piece.outer)
    wrong("piece", "not_a_body", `a core of less than the outer ${piece.outer} cm`, piece.core);
  if (piece?.shape === "spiral" && piece.fin >= piece.pitch)
    wrong("piece", "not_a_body", `a fin of less than the pitch ${piece.pitch} cm`, piece.fin);
}

/** Wood and liquid. */
export const OakDraft = z.strictObject({ ...oakWood, volumeMl: VolumeMl }).superRefine(woodIssues);

/** A range that is known, and how. */
const Known = z.object({ low: z.number(), likely: z.number(), high: z.number(), how: z.string() });

export const OakResult = z.object({
  areaCm2: z.number(),
  volumeMl: z.number(),
  /** cm² a litre, and against a 200 L cask; low and high are what 92 ± 5 cm²/L leaves open. */
  areaPerLitre: z.number(),
  caskRatio: z.number(),
  caskRatioLow: z.number(),
  caskRatioHigh: z.number(),
  /** Null where nobody weighed the wood and its size is not known. */
  gramsPerLitre: z.number().nullable(),
  grams: z.object({ low: z.number(), likely: z.number(), high: z.number(), weighed: z.boolean() }).nullable(),
  /** cm² of wood that give this volume what a 200 L cask gives; and so many of these pieces. */
  asInCaskCm2: z.object({ low: z.number(), likely: z.number(), high: z.number() }),
  piecesAsInCask: z.number().nullable(),
  /** cm² a litre in a cask as small as this vessel, by the cube root. */
  smallCaskAreaPerLitre: z.number(),
  /** Face to face, of one piece. */
  thicknessCm: z.number().nullable(),
  soaksUpMl: Known.nullable(),
  soaksUpFirstDaysMl: Known.nullable(),
  extractAtMostG: Known.nullable(),
  cautions: z.array(z.string()),
  notKnown: z.string(),
});
export type OakResult = z.infer<typeof OakResult>;
