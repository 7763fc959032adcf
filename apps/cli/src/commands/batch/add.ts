import type { BodyOf, Pour } from "@partsproof/house/protocol";
import { type AtHousehold, findRecipe, findVessel } from "../../door/index.ts";
import {
  BadInput,
  type GivenFlags,
  issueAt,
  many,
  one,
  readAnyText,
  readText,
  readVesselAmount,
  readVolume,
  readWhole,
  refuse,
  yes,
} from "../../flags/index.ts";
import { printBatch } from "../../print/batch.ts";
import { householdCommand } from "../command.ts";
import { planFlags, planned } from "./plan.ts";

const flags = {
  ...planFlags,
  name: one(readText("name"), "<name>", "what the batch is called; else the label of its vessel"),
  final: one(readVolume, "<volume>", "poured as planned, so that this comes out"),
  pour: many(
    readVesselAmount,
    "<vessel>=<amount>",
    "instead of --final: what was really poured, in order; tap=50ml for water",
  ),
  "vessel-label": one(readText("vessel label"), "<label>", "a new vessel for it, with --capacity"),
  capacity: one(readVolume, "<volume>", "what the new vessel holds at most"),
  vessel: one(readText("vessel"), "<vessel>", "instead: an empty vessel that is there, id or label"),
  rest: one(readWhole("rest", 0, 3650, "days"), "<days>", "else as the recipe says"),
  "no-rest": yes("no rest asked"),
  note: one(readAnyText, "<text>", "whatever else matters"),
};

type Given = GivenFlags<typeof flags>;
type Draft = NonNullable<BodyOf<"addBatch">>;

export const batchAdd = householdCommand({
  name: "batch add",
  says: "Record a batch as poured. Takes the stock off the shelf, all of it or none.",
  flags,
  example:
    'batch add --recipe "Two to one" --final 500ml --name "First try" --vessel-label "Blending bottle 1" --capacity 750ml',
  places: { recipeId: "recipe", recipeNumber: "number", finalMl: "final", pours: "pour", restDays: "rest" },
  run: async ({ flags: given }, here) => {
    if (given.rest !== undefined && given["no-rest"]) {
      refuse(issueAt(["no-rest"], "flags_exclude", "no --rest beside it", "--rest --no-rest"));
    }
    const { id } = await findRecipe(here, given.recipe, ["recipe"]);
    const vessel = await into(here, given);
    const pours = await poured(here, id, given);
    const restDays = given["no-rest"] ? null : given.rest;
    const batch = await here.client("addBatch", {
      at: { household: here.household.id },
      body: {
        name: given.name ?? vessel.label,
        recipeId: id,
        vessel: vessel.draft,
        pours,
        ...(given.number === undefined ? {} : { recipeNumber: given.number }),
        ...(restDays === undefined ? {} : { restDays }),
        ...(given.note === undefined ? {} : { note: given.note }),
      },
    });
    return { json: batch, text: () => printBatch(batch, here.household.currency) };
  },
});

async function into(
  here: AtHousehold,
  given: Given,
): Promise<{ readonly label: string; readonly draft: Draft["vessel"] }> {
  const { vessel, capacity, "vessel-label": label } = given;
  if (vessel !== undefined) {
    if (label !== undefined)
      refuse(issueAt(["vessel-label"], "flags_exclude", "no --vessel beside it", label));
    if (capacity !== undefined)
      refuse(issueAt(["capacity"], "flags_exclude", "no --vessel beside it", capacity));
    const found = await findVessel(here, vessel, ["vessel"]);
    return { label: found.label, draft: { kind: "existing", vesselId: found.id } };
  }
  const asked = "--vessel-label and --capacity, or --vessel";
  if (label === undefined) refuse(issueAt(["vessel-label"], "flag_missing", asked, null));
  if (capacity === undefined) refuse(issueAt(["capacity"], "flag_missing", asked, null));
  return { label, draft: { kind: "new", label, capacityMl: capacity } };
}

/** What was poured: as typed, or as planned, where the shelf has all of it. */
async function poured(here: AtHousehold, recipeId: string, given: Given): Promise<Pour[]> {
  const { pour, final, number } = given;
  if (pour.length > 0 && final !== undefined) {
    refuse(issueAt(["final"], "flags_exclude", "no --pour beside it", final));
  }
  if (final !== undefined) {
    const plan = await planned(here, recipeId, number, final);
    if (plan.issues.length > 0) throw new BadInput(plan.issues);
    return plan.steps.flatMap((step) => step.pours.map(({ from, amount }) => ({ from, amount })));
  }
  if (pour.length === 0)
    refuse(issueAt(["final"], "flag_missing", "--final <volume> or --pour <vessel>=<amount>", null));
  const pours: Pour[] = [];
  for (const [index, [text, amount]] of pour.entries()) {
    const from: Pour["from"] = /^(tap|water)$/i.test(text)
      ? { kind: "water" }
      : { kind: "vessel", vesselId: (await findVessel(here, text, ["pour", index])).id };
    pours.push({ from, amount });
  }
  return pours;
}
