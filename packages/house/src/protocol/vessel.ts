import { z } from "zod";
import { Id, Instant, LongText, Money, OptionalText, ShortText, Version, VolumeMl } from "./fields.ts";
import { Cask } from "./whiskey.ts";

export const VesselKind = z.enum(["bottle", "blending bottle", "vial", "jug"]);

/** What a vessel holds, folded from the ledger. Volumes at 20 °C; shares by mass of pure alcohol unless named otherwise. */
export const Contents = z.object({
  volumeMl: z.number(),
  massG: z.number(),
  abv20: z.number().nullable(),
  proof60F: z.number().nullable(),
  composition: z.array(
    z.object({
      liquidId: z.string(),
      label: z.string(),
      shareOfAlcohol: z.number(),
      shareOfMass: z.number(),
    }),
  ),
  cost: z.object({
    knownMinor: z.number(),
    unpricedShareOfMass: z.number(),
    /** null unless every whiskey in it has a price. */
    perLitreMinor: z.number().nullable(),
  }),
  youngestAge: z.object({ years: z.number().nullable(), why: z.string() }),
  grainShares: z.array(z.object({ grain: z.string(), share: z.number() })),
  unknownGrainShare: z.number(),
  casks: z.array(z.object({ ...Cask.shape, shareOfAlcohol: z.number() })),
});
export type Contents = z.infer<typeof Contents>;

/** A bottle from the shop. `levelMl` is what is in it now; `sealed: false` for one already opened. */
export const BottleDraft = z.object({
  whiskeyId: Id,
  label: OptionalText.default(""),
  capacityMl: VolumeMl.optional(),
  levelMl: z.number().min(0).max(100_000).optional(),
  sealed: z.boolean().default(true),
  priceMinor: Money.nullable().optional(),
});
export const VesselDraft = z.object({
  kind: VesselKind.exclude(["bottle"]),
  label: ShortText,
  capacityMl: VolumeMl,
});
export const VesselEdit = z.object({
  version: Version,
  label: ShortText.optional(),
  opened: z.literal(true).optional(),
});

export const Vessel = z.object({
  id: Id,
  version: Version,
  kind: VesselKind,
  label: ShortText,
  capacityMl: VolumeMl,
  /** The whiskey on the label of a bottle. */
  whiskeyId: Id.nullable(),
  /** The batch resting in it, if any. */
  batchId: Id.nullable(),
  priceMinor: Money.nullable(),
  /** null while sealed, or for a vessel that never was. */
  openedAt: Instant.nullable(),
  sealed: z.boolean(),
  createdAt: Instant,
  contents: Contents,
  /** Kept for flights whose key is still sealed; not free to pour. */
  keptMl: z.number(),
});
export type Vessel = z.infer<typeof Vessel>;

export const Account = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("vessel"), vesselId: Id }),
  z.object({ kind: z.literal("outside"), name: z.enum(["shop", "tap", "glass", "drain", "air"]) }),
]);
export type Account = z.infer<typeof Account>;

export const TransferAmount = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("volume"), ml: z.number() }),
  z.object({ kind: z.literal("mass"), g: z.number() }),
  z.object({ kind: z.literal("all") }),
]);

export type TransferAmount = z.infer<typeof TransferAmount>;

/** From the shop a `whiskeyId` is needed; from the tap the liquid is water; `all` only out of a vessel. */
export const TransferDraft = z.object({
  from: Account,
  to: Account,
  amount: TransferAmount,
  whiskeyId: Id.optional(),
  priceMinor: Money.nullable().optional(),
  note: LongText.default(""),
});
export const Transfer = z.object({
  id: Id,
  seq: z.int(),
  at: Instant,
  from: Account,
  to: Account,
  /** As asked. */
  amount: TransferAmount,
  whiskeyId: Id.nullable(),
  batchId: Id.nullable(),
  flightId: Id.nullable(),
  note: LongText,
  undoneAt: Instant.nullable(),
});
export type Transfer = z.infer<typeof Transfer>;
