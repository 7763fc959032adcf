import { contentsOfVessel } from "@partsproof/core/ledger";
import type { BodyRead, Issue, TransferAmount } from "../../protocol/index.ts";
import { stockOf } from "../batches/index.ts";
import { born, edited } from "../birth.ts";
import type { House, Records } from "../ports.ts";
import { HouseRefusal, refuse } from "../refuse.ts";
import type { TrialSetRow, VesselRow } from "../rows.ts";
import { type Entry, post, type Shelf, shelfState, shownContents } from "../shelf/index.ts";
import { type Draw, drawsOf, type TrialPour } from "./set-bottles.ts";
import { standingGlasses } from "./set-standing.ts";

type Body = BodyRead<"pourTrials">;
type Wanted = NonNullable<Body["trials"]>[number];

/** B2: a vial for each trial, every pour into it, and the set that knows them: all of it or none. */
export async function pourSet(
  records: Records,
  house: House,
  old: TrialSetRow,
  body: Body,
): Promise<TrialSetRow> {
  const poured = new Set(old.made.map(({ trial }) => trial));
  const all = old.plan.trials.map((_, i): Wanted => ({ trial: i + 1 }));
  const wanted = body.trials ?? all.filter(({ trial }) => !poured.has(trial));
  checkTrials(old, wanted, poured);
  const shelf = await shelfState(records, old.householdId);
  const perMl = gramsPerMl(shelf, old);
  const pours = wanted.map((one): TrialPour => ({ trial: one.trial, ml: mlOf(old, one, perMl) }));
  const { draws, parts } = drawsOf(shelf, old.asked, pours);
  refuseShort(shelf, old, pours, parts);
  const vials = new Map<number, VesselRow>();
  for (const { trial, ml } of pours) {
    const vial = vialOf(house, old, trial, ml);
    await records.insert("vessel", vial);
    vials.set(trial, vial);
  }
  await post(
    records,
    house,
    old.householdId,
    draws.map((draw) => entryOf(draw, vials.get(draw.trial)?.id ?? "", old, wanted)),
  );
  const head = edited(house, "set of trials", old, body.version);
  return {
    ...head,
    made: [...old.made, ...wanted.map(({ trial }) => ({ trial, vesselId: vials.get(trial)?.id ?? "" }))],
    madeAt: old.madeAt ?? head.updatedAt,
  };
}

function checkTrials(old: TrialSetRow, wanted: readonly Wanted[], poured: ReadonlySet<number>): void {
  const seen = new Set<number>();
  const count = old.plan.trials.length;
  for (const [i, { trial, amounts }] of wanted.entries()) {
    const at = (field: string) => ["trials", i, field];
    if (trial > count) wrong("unknown_trial", at("trial"), `1 to ${count}, the trials of this set`, trial);
    if (poured.has(trial) || seen.has(trial))
      wrong("trial_poured", at("trial"), "a trial that is not poured yet", trial);
    seen.add(trial);
    if (amounts === undefined) continue;
    if (amounts.length !== old.plan.parts.length)
      wrong(
        "not_one_each",
        at("amounts"),
        `${old.plan.parts.length} amounts, one for each part`,
        amounts.length,
      );
    if (!amounts.some((amount) => amount > 0))
      wrong("nothing_poured", at("amounts"), "one amount above 0", 0);
  }
  if (wanted.length === 0) wrong("trial_poured", ["trials"], "a trial that is not poured yet", 0);
}

function wrong(code: string, path: (string | number)[], limit: string, received: number): never {
  refuse(422, {
    code,
    path,
    limit,
    received,
    message: `${path.join(".")} requires ${limit}, got ${received}`,
  });
}

/** Of each part as it stands first on the shelf: what a scale's grams are in mL. */
function gramsPerMl(shelf: Shelf, { asked }: TrialSetRow): readonly number[] {
  return asked.parts.map(({ of }) => {
    const [vessel] = stockOf(shelf, of);
    if (vessel === undefined) return 1;
    const { massG, volumeMl } = shownContents(shelf, contentsOfVessel(shelf.state, vessel.id));
    return volumeMl > 0 ? massG / volumeMl : 1;
  });
}

function mlOf({ plan }: TrialSetRow, { trial, amounts }: Wanted, perMl: readonly number[]): number[] {
  const planned = plan.trials[trial - 1];
  const byScale = planned?.g !== null;
  if (amounts === undefined) return [...(planned?.ml ?? [])];
  return amounts.map((amount, part) => (byScale ? amount / (perMl[part] ?? 1) : amount));
}

/** In the ledger as a volume: what a scale said was turned into one by the density of what is in the bottle. */
function entryOf(
  { part, trial, vesselId, ml }: Draw,
  vialId: string,
  { plan, name }: TrialSetRow,
  wanted: readonly Wanted[],
): Entry {
  const amount: TransferAmount = { kind: "volume", ml };
  return {
    from: { kind: "vessel", vesselId },
    to: { kind: "vessel", vesselId: vialId },
    amount,
    liquid: null,
    note: `${name}, trial ${trial} of ${plan.trials.length}`.slice(0, 200),
    path: [
      "trials",
      Math.max(
        0,
        wanted.findIndex((one) => one.trial === trial),
      ),
      "amounts",
      part,
    ],
  };
}

/** A vial holds a little more than is poured into it. */
function vialOf(
  house: House,
  { householdId, name }: TrialSetRow,
  trial: number,
  ml: readonly number[],
): VesselRow {
  const poured = ml.reduce((sum, one) => sum + one, 0);
  return {
    ...born(house, householdId),
    kind: "vial",
    label: `${name.slice(0, 100)}, trial ${trial}`,
    capacityMl: Math.ceil((poured * 1.05) / 5) * 5,
    whiskeyId: null,
    batchId: null,
    priceMinor: null,
    openedAt: null,
  };
}

/** B2, B7: what all bottles of a part together lack, beside what stays in them for the flight. */
function refuseShort(
  shelf: Shelf,
  { plan, asked }: TrialSetRow,
  pours: readonly TrialPour[],
  parts: ReturnType<typeof drawsOf>["parts"],
): void {
  const issues = parts.flatMap(({ keptMl, shortMl }, part): Issue[] => {
    if (shortMl <= 0) return [];
    const needMl = pours.reduce((sum, { ml }) => sum + (ml[part] ?? 0), 0);
    const beside = keptMl > 0 ? `, beside ${keptWords(shelf, asked, part)}` : "";
    const limit = `at most the ${(needMl - shortMl).toFixed(1)} mL of ${plan.parts[part] ?? ""} that are free on the shelf${beside}`;
    return [
      {
        code: "shelf_short",
        path: ["trials"],
        limit,
        received: needMl,
        message: `these trials require ${limit}, got ${needMl.toFixed(1)} mL`,
      },
    ];
  });
  if (issues.length > 0) throw new HouseRefusal(422, issues);
}

/** "15.0 mL that stay in Barn Door for glass 1". */
function keptWords(shelf: Shelf, { flight, parts }: TrialSetRow["asked"], part: number): string {
  const of = parts[part]?.of;
  const stock = new Set(of === undefined ? [] : stockOf(shelf, of).map(({ id }) => id));
  return standingGlasses(shelf, flight)
    .filter(({ vesselId }) => vesselId !== null && stock.has(vesselId))
    .map(({ glass, label, keepMl }) => `${keepMl.toFixed(1)} mL that stay in ${label} for glass ${glass}`)
    .join(", ");
}
