import type { BodyOf, Whiskey } from "@partsproof/house/protocol";
import { type AtHousehold, everyItem, findWhiskey, whiskeyLabel } from "../../door/index.ts";
import { issueAt, minorUnits, one, readLevel, readText, readVolume, refuse, yes } from "../../flags/index.ts";
import { printVessel } from "../../print/vessel.ts";
import { householdCommand } from "../command.ts";
import { typedWhiskey, whiskeyFlags } from "./typed-whiskey.ts";

export const shelfAdd = householdCommand({
  name: "shelf add",
  says: "A bottle, and the whiskey in it if it is not known yet.",
  flags: {
    whiskey: one(readText("whiskey"), "<whiskey>", "a further bottle of one that is known: id or name"),
    ...whiskeyFlags,
    price: one(readText("price"), "<amount>", "of one full bottle, such as 45.00"),
    size: one(readVolume, "<volume>", "of a full bottle; else 700 ml, or that of the known whiskey"),
    level: one(readLevel, "<volume>", "what is in it now; else it is full"),
    opened: yes("it was opened already; so is any bottle that is not full"),
    label: one(readText("label"), "<label>", "what to call this bottle; else the whiskey's name"),
  },
  example:
    'shelf add --maker Saltreach --name "Lamplighter\'s Rest" --strength 46.8 --age 12 --grain barley=68 --grain rye=32 --cask "American oak:bourbon" --price 145.00 --size 700ml --level 350ml --gone',
  places: {
    grains: "grain",
    casks: "cask",
    ageYears: "age",
    distilledAt: "distilled",
    priceMinor: "price",
    bottleMl: "size",
    capacityMl: "size",
    levelMl: "level",
    whiskeyId: "whiskey",
    availability: "gone",
  },
  run: async ({ flags }, here) => {
    const { client, household } = here;
    const { price, size, level, opened, label } = flags;
    const at = { household: household.id };
    const priceMinor = price === undefined ? null : minorUnits(price, household.currency);
    if (priceMinor !== null && typeof priceMinor === "object") refuse(priceMinor);
    const known = flags.whiskey === undefined ? null : await findWhiskey(here, flags.whiskey, ["whiskey"]);
    const draft = known === null ? typedWhiskey(flags, { priceMinor, ml: size }) : refuseFacts(flags);
    if (draft !== null) await refuseKnown(here, draft);
    const fullMl = size ?? known?.bottleMl ?? draft?.bottleMl ?? 700;
    if (level !== undefined && level > fullMl) {
      refuse(issueAt(["level"], "vessel_overflow", `at most the ${fullMl} mL of the bottle`, `${level} mL`));
    }
    const bottle = {
      sealed: !opened && (level === undefined || level === fullMl),
      ...(label === undefined ? {} : { label }),
      ...(size === undefined ? {} : { capacityMl: size }),
      ...(level === undefined ? {} : { levelMl: level }),
      ...(price === undefined ? {} : { priceMinor }),
    };
    const whiskey = known ?? (await client("addWhiskey", { at, body: draft ?? undefined } as never));
    const vessel = await client("addBottle", { at, body: { whiskeyId: whiskey.id, ...bottle } }).catch(
      async (error: unknown) => {
        if (known === null) await takeBack(here, whiskey);
        throw error;
      },
    );
    return {
      json: { whiskey, bottle: vessel },
      text: () => printVessel(vessel, whiskey, household.currency),
    };
  },
});

/** A whiskey that was added for a bottle the house then refused goes again: nothing is left half-written. */
async function takeBack({ client, household }: AtHousehold, { id, version }: Whiskey): Promise<void> {
  const at = { household: household.id, whiskey: id };
  await client("removeWhiskey", { at, query: { version } });
}

/** With --whiskey the facts are those it already has. */
function refuseFacts(flags: Readonly<Record<string, unknown>>): null {
  for (const name of Object.keys(whiskeyFlags)) {
    const value = flags[name];
    if (value === undefined || value === false || (Array.isArray(value) && value.length === 0)) continue;
    refuse(issueAt([name], "flags_exclude", "no --whiskey beside it: a known whiskey has its facts", name));
  }
  return null;
}

/** The same maker, name and release twice would be one whiskey under two ids. */
async function refuseKnown(
  { client, household }: AtHousehold,
  draft: NonNullable<BodyOf<"addWhiskey">>,
): Promise<void> {
  const typed = whiskeyLabel({ ...draft, release: draft.release ?? "" }).toLowerCase();
  const whiskeys = await everyItem(client, "listWhiskeys", { household: household.id });
  const same = whiskeys.find((whiskey) => whiskeyLabel(whiskey).toLowerCase() === typed);
  if (same === undefined) return;
  const limit = `a whiskey that is new here; for another bottle of a known one use --whiskey ${same.id}`;
  refuse(issueAt(["name"], "whiskey_known", limit, whiskeyLabel(same)));
}
