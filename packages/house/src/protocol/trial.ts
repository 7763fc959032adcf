import { z } from "zod";
import { Id, Instant, LongText, ShortText, StatedStrength, Version } from "./fields.ts";
import { MixtureModelName } from "./counts-asked.ts";
import { NameId } from "./glass.ts";
import { PlayedFlight } from "./lineage.ts";

const TRIAL_LIMITS = { parts: 6, ownParts: 20, trials: 40, known: 60 } as const;

const Share = z.number().min(0).max(1);
const Name = z.string().trim().min(1).max(120);

/** What its share may be, 0 to 1 where left out. */
const bounds = { low: Share.optional(), high: Share.optional() };

const PlanKind = z.enum(["lattice", "centroid", "D", "I", "own"]);

const settings = {
  /** Lattice and centroid are the whole plan; D and I choose the few that tell most; own takes `mixes` as they are. */
  plan: PlanKind,
  /** For own: whole parts of each mix, in the order of the parts. */
  mixes: z
    .array(z.array(z.int().min(0).max(1000)))
    .min(1)
    .max(TRIAL_LIMITS.trials)
    .optional(),
  model: MixtureModelName.optional(),
  /** For D and I: how many to choose; as many as the model has terms less those known, at least 1, where left out. */
  trials: z.int().min(1).max(TRIAL_LIMITS.trials).optional(),
  /** Steps of the lattice, 2 where left out. */
  steps: z.int().min(1).max(6).optional(),
  /** Mixtures that were tasted already, shares in the order of the parts. */
  known: z.array(z.array(Share)).max(TRIAL_LIMITS.known).optional(),
  /** What a trial measures at least, and at most where the shares ask for more. */
  volumeMl: z.number().min(5).max(500).optional(),
  mostMl: z.number().min(5).max(500).optional(),
  /** Smallest step: a syringe's in mL, or a scale's in g. 0.5 mL where both are left out. */
  syringeMl: z.number().min(0.01).max(10).optional(),
  scaleG: z.number().min(0.001).max(10).optional(),
  /** How far a share may be off, 0.01 where left out. */
  within: z.number().min(0.0001).max(0.2).optional(),
};

interface Settings {
  readonly parts: readonly { readonly low?: number | undefined; readonly high?: number | undefined }[];
  readonly known?: readonly (readonly number[])[] | undefined;
  readonly plan: z.infer<typeof PlanKind>;
  readonly mixes?: readonly (readonly number[])[] | undefined;
  readonly flight?: TrialFlight | undefined;
  readonly trials?: number | undefined;
  readonly steps?: number | undefined;
  readonly syringeMl?: number | undefined;
  readonly scaleG?: number | undefined;
  readonly volumeMl?: number | undefined;
  readonly mostMl?: number | undefined;
}

/** What no field says by itself. */
function checkTrials(
  {
    parts,
    known = [],
    plan,
    mixes,
    flight,
    trials,
    steps,
    syringeMl,
    scaleG,
    volumeMl = 30,
    mostMl,
  }: Settings,
  names: readonly string[],
  named: "name" | "of",
  strengths: boolean,
  context: z.core.$RefinementCtx,
): void {
  const wrong = (path: (string | number)[], code: string, message: string, input: unknown): void =>
    context.addIssue({ code: "custom", path, message, input, params: { code } });
  for (const [n, name] of names.entries())
    if (names.indexOf(name) < n)
      wrong(
        ["parts", n, named],
        `${named}_twice`,
        `a ${named === "name" ? "name" : "whiskey or batch"} of its own`,
        name,
      );
  const sum = (of: (part: (typeof parts)[number]) => number): number =>
    parts.reduce((total, part) => total + of(part), 0);
  for (const [n, { low = 0, high = 1 }] of parts.entries())
    if (low > high) wrong(["parts", n, "low"], "low_above_high", `at most ${high}, its high`, low);
  const [least, most] = [sum(({ low = 0 }) => low), sum(({ high = 1 }) => high)];
  if (least > 1 + 1e-9)
    wrong(["parts"], "bounds_leave_nothing", "lower bounds that add up to 1 at most", least);
  if (most < 1 - 1e-9)
    wrong(["parts"], "bounds_leave_nothing", "upper bounds that add up to 1 or more", most);
  const bounded = parts.some(({ low = 0, high = 1 }) => low > 0 || high < 1);
  if (bounded && plan !== "D" && plan !== "I")
    wrong(["plan"], "plan_has_no_bounds", "D or I, where parts have bounds", plan);
  if (trials !== undefined && plan !== "D" && plan !== "I")
    wrong(["trials"], "plan_has_its_number", "no number beside lattice or centroid", trials);
  if ((mixes === undefined) === (plan === "own"))
    wrong(["mixes"], "mixes_are_own", "mixes beside own, and beside no other plan", mixes?.length ?? null);
  if (plan !== "own" && parts.length > TRIAL_LIMITS.parts)
    wrong(["parts"], "too_many_parts", `at most ${TRIAL_LIMITS.parts}, but for own mixes`, parts.length);
  if (plan !== "own" && parts.length < 2)
    wrong(["parts"], "too_few_parts", "at least 2, but for own mixes", parts.length);
  for (const [n, mix] of (mixes ?? []).entries()) {
    if (mix.length !== parts.length)
      wrong(["mixes", n], "not_one_each", `${parts.length} numbers, one for each part`, mix.length);
    if (!mix.some((part) => part > 0)) wrong(["mixes", n], "nothing_poured", "one part above 0", 0);
  }
  if (flight !== undefined && plan !== "own")
    wrong(["flight"], "flight_of_own_mixes", "a flight beside own mixes only", plan);
  for (const [n, { of }] of (flight?.glasses ?? []).entries())
    if ("trial" in of && of.trial > (mixes?.length ?? 0))
      wrong(
        ["flight", "glasses", n, "of", "trial"],
        "unknown_trial",
        `1 to ${mixes?.length ?? 0}, the mixes of this set`,
        of.trial,
      );
  if (steps !== undefined && plan !== "lattice")
    wrong(["steps"], "steps_not_for_plan", "steps beside a lattice only", steps);
  for (const [n, shares] of known.entries()) {
    const total = shares.reduce((so, share) => so + share, 0);
    if (shares.length !== parts.length)
      wrong(["known", n], "not_one_each", `${parts.length} shares, one for each part`, shares.length);
    else if (Math.abs(total - 1) > 0.015)
      wrong(["known", n], "shares_do_not_add_up", "shares that add up to 1, within 0.015", total);
  }
  if (syringeMl !== undefined && scaleG !== undefined)
    wrong(["scaleG"], "syringe_or_scale", "either syringeMl or scaleG", scaleG);
  if (scaleG !== undefined && !strengths)
    wrong(["scaleG"], "strength_missing", "a strength of every part, as grams are poured", scaleG);
  if (mostMl !== undefined && mostMl < volumeMl)
    wrong(["mostMl"], "most_below_least", `at least ${volumeMl}, what a trial measures`, mostMl);
}

/** A set of small mixes to plan. */
export const TrialPlanDraft = z
  .strictObject({
    parts: z
      .array(
        z.strictObject({
          name: Name,
          /** Where every part says its strength, each trial says its own. */
          strength: StatedStrength.optional(),
          ...bounds,
        }),
      )
      .min(2)
      .max(TRIAL_LIMITS.ownParts),
    ...settings,
  })
  .superRefine((draft, context) =>
    checkTrials(
      draft,
      draft.parts.map(({ name }) => name),
      "name",
      draft.parts.every(({ strength }) => strength !== undefined),
      context,
    ),
  );
export type TrialPlanDraft = z.infer<typeof TrialPlanDraft>;

export const TrialPlan = z.object({
  parts: z.array(z.string()),
  plan: PlanKind,
  model: MixtureModelName,
  terms: z.int(),
  trials: z.array(
    z.object({
      /** As planned, and as it comes out in whole steps. */
      shares: z.array(z.number()),
      pouredShares: z.array(z.number()),
      ml: z.array(z.number()),
      /** By the scale; null where a syringe is used. */
      g: z.array(z.number()).nullable(),
      totalMl: z.number(),
      /** The most any share is off. */
      off: z.number(),
      /** Contraction counted; null where a part states no strength. */
      abv20: z.number().nullable(),
      /** mL of ethanol are not told: grams, for the flight's sum. */
      ethanolG: z.number().nullable(),
    }),
  ),
  /** What to draw of each bottle for all trials together, in the order in which one syringe is rinsed least. */
  pourList: z.array(z.object({ part: z.string(), ml: z.number(), intoTrials: z.array(z.int()) })),
  totalMl: z.number(),
  /** Poured above what the trials measure, to keep the shares in whole steps. */
  overMl: z.number(),
  /** Against the shares as planned: 1 where whole steps cost nothing; null where too few runs tell the terms apart. */
  pouredEfficiency: z.number().nullable(),
  /** Mean variance of a prediction over the region, for a noise of 1; null for lattice and centroid. */
  meanVariance: z.number().nullable(),
  notes: z.array(z.string()),
});
export type TrialPlan = z.infer<typeof TrialPlan>;

/** What a part of a trial is poured from. */
const TrialOf = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("whiskey"), whiskeyId: Id }),
  z.object({ kind: z.literal("batch"), batchId: Id }),
]);

/** A flight planned for a set of trials: set once they are poured. */
export const TrialFlight = z.strictObject({
  question: z.enum(["like_best", "how_close"]),
  /** For how close: the name that all is to come close to, in one of the glasses. */
  targetNameId: NameId.nullable().default(null),
  /** mL that stay in a vessel that stands ready for a glass, for all who taste, when trials are drawn; 15 where left out. */
  pourMl: z.number().min(1).max(10_000).optional(),
  /** In their order; each is a trial of the set, counted from 1, or a vessel that stands ready. */
  glasses: z
    .array(
      z.strictObject({
        of: z.union([
          z.strictObject({ trial: z.int().min(1).max(TRIAL_LIMITS.trials) }),
          z.strictObject({ vesselId: Id }),
        ]),
        kind: z.enum(["anchor", "target", "again", "new"]),
        why: z.string().trim().max(500),
      }),
    )
    .min(2)
    .max(16),
});
export type TrialFlight = z.infer<typeof TrialFlight>;

/** What a set of trials is planned from: whiskeys and batches of the household, at the strengths they have here. */
export const TrialsAsked = z.strictObject({
  parts: z
    .array(z.strictObject({ of: TrialOf, ...bounds }))
    .min(1)
    .max(TRIAL_LIMITS.ownParts),
  ...settings,
  /** The flight that the mixes are poured for: what else stands in it, and why each glass is there. */
  flight: TrialFlight.optional(),
});
export type TrialsAsked = z.infer<typeof TrialsAsked>;

export const TrialSetDraft = z
  .strictObject({ name: ShortText, note: LongText.default(""), ...TrialsAsked.shape })
  .superRefine((draft, context) =>
    checkTrials(
      draft,
      draft.parts.map(({ of }) => (of.kind === "whiskey" ? of.whiskeyId : of.batchId)),
      "of",
      true,
      context,
    ),
  );

/** Pours trials into vials of their own: all of them, or some; as planned, or what was really poured of each part. */
export const TrialsPoured = z.strictObject({
  version: Version,
  trials: z
    .array(
      z.strictObject({
        trial: z.int().min(1).max(TRIAL_LIMITS.trials),
        /** In the order of the parts, g where the set is planned for a scale, else mL. */
        amounts: z.array(z.number().min(0).max(1000)).optional(),
      }),
    )
    .min(1)
    .max(TRIAL_LIMITS.trials)
    .optional(),
});

export const TrialSet = z.object({
  id: Id,
  version: Version,
  name: ShortText,
  note: LongText,
  createdAt: Instant,
  asked: TrialsAsked,
  plan: TrialPlan,
  /** For each part, what all trials that are not poured yet need, which bottles it comes out of, and what is short. */
  bottles: z.array(
    z.object({
      label: z.string(),
      needMl: z.number(),
      from: z.array(z.object({ vesselId: Id, label: z.string(), ml: z.number() })),
      /** Of what is free of it: stays where a glass of the flight is poured from. */
      keptMl: z.number(),
      shortMl: z.number(),
    }),
  ),
  /** The vials, by trial; what is left in each, and how it did in flights that are revealed. */
  made: z.array(
    z.object({
      trial: z.int(),
      vesselId: Id,
      label: z.string(),
      leftMl: z.number(),
      abv20: z.number().nullable(),
      flights: z.array(PlayedFlight),
    }),
  ),
  madeAt: Instant.nullable(),
  /** The flight they are poured for, glass by glass; null where there is none. */
  flight: z
    .object({
      question: TrialFlight.shape.question,
      targetNameId: NameId.nullable(),
      glasses: z.array(
        z.object({
          /** From 1; null of what stands ready. */
          trial: z.int().nullable(),
          /** What to pour it from; null while its trial is not poured, and where the vessel is gone. */
          vesselId: Id.nullable(),
          label: z.string(),
          /** Of what stands ready: mL that stay in it for this glass. */
          keepMl: z.number().nullable(),
          /** The vessel that was named when it was planned, where another of the same pours it: that one holds too little by now. */
          insteadOf: z.string().nullable(),
          kind: z.enum(["anchor", "target", "again", "new"]),
          why: z.string(),
        }),
      ),
    })
    .nullable(),
});
export type TrialSet = z.infer<typeof TrialSet>;
