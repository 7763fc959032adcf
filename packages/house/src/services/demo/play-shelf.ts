import type { EntryThat } from "./entry.ts";
import { idOf, type Play } from "./play.ts";
import { profileOf } from "./profiles.data.ts";
import { type WhiskeyKey, whiskeys } from "./whiskeys.data.ts";

const INVENTED = "Invented for the demo.";

/** Every whiskey of the household, each said to be invented. */
export async function playWhiskeys({ ask, known }: Play): Promise<void> {
  for (const [key, facts] of Object.entries(whiskeys)) {
    const body = { ...facts, profile: profileOf(key as WhiskeyKey), note: `${facts.note} ${INVENTED}` };
    const { id } = await ask("addWhiskey", { at: { household: known.household }, body });
    known.whiskeys.set(key, id);
  }
}

export async function playTasters({ ask, known }: Play, names: readonly string[]): Promise<void> {
  for (const name of names) {
    const { id } = await ask("addTaster", { at: { household: known.household }, body: { name } });
    known.tasters.set(name, id);
  }
}

export async function playBottle(play: Play, entry: EntryThat<"shelve">): Promise<void> {
  const { bottle, of, label, levelMl, paidMinor } = entry;
  const whiskeyId = idOf(play, "whiskeys", of);
  const { id } = await play.ask("addBottle", {
    at: { household: play.known.household },
    body: {
      whiskeyId,
      sealed: levelMl === undefined,
      ...(label === undefined ? {} : { label }),
      ...(levelMl === undefined ? {} : { levelMl }),
      ...(paidMinor === undefined ? {} : { priceMinor: paidMinor }),
    },
  });
  play.known.vessels.set(bottle, id);
  play.known.names.set(bottle, `whiskey:${whiskeyId}`);
}

export async function playVessel({ ask, known }: Play, entry: EntryThat<"set out">): Promise<void> {
  const { vessel, kind, label, capacityMl } = entry;
  const at = { household: known.household };
  const { id } = await ask("addVessel", { at, body: { kind, label, capacityMl } });
  known.vessels.set(vessel, id);
  known.names.set(vessel, `vessel:${id}`);
}
