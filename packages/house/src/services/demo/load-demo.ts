import { changed } from "../flights/index.ts";
import type { Handlers } from "../handler.ts";
import { shownHousehold } from "../household/index.ts";
import { knownHousehold } from "../known.ts";
import type { House, Records } from "../ports.ts";
import { refuse, staleEdit } from "../refuse.ts";
import type { HouseholdRow } from "../rows.ts";
import { diary } from "./diary.data.ts";
import { BEGINS, HOUSEHOLD, TASTERS } from "./household.data.ts";
import { asker, type Play } from "./play.ts";
import { playDiary } from "./play-diary.ts";
import { playTasters, playWhiskeys } from "./play-shelf.ts";
import { readOnce } from "./read-once.ts";
import { scriptClock } from "./script-clock.ts";

export const demoHandlers: Handlers<"loadDemo"> = {
  /**
   * H3: the invented household, played through the house's own handlers, so that every rule holds for it as well.
   * They all write into this one transaction: all of the demo is there, or nothing.
   */
  loadDemo: ({ house }) =>
    house.store.transaction(async (stored) => {
      const records = readOnce(stored);
      await refuseSecond(records);
      const clock = scriptClock(house.clock.now());
      clock.goTo(BEGINS);
      const inside: House = {
        ...house,
        clock,
        store: { ...house.store, transaction: (work) => work(records) },
      };
      // The household comes into the house today, after those that were there; only what it did is older.
      const { id } = await asker({ ...inside, clock: house.clock }, clock)("addHousehold", {
        body: HOUSEHOLD,
      });
      const play: Play = { ask: asker(inside, clock), clock, known: knowing(id) };
      await playTasters(play, TASTERS);
      await playWhiskeys(play);
      await playDiary(play, diary);
      return shownHousehold(await marked(records, id));
    }),
};

async function refuseSecond(records: Records): Promise<void> {
  const [loaded] = await records.households({ where: { demo: true }, limit: 1 });
  if (!loaded) return;
  refuse(409, {
    code: "demo_loaded",
    path: [],
    limit: "no demo household in this house",
    received: loaded.name,
    message: `loading the demo requires no demo household in this house, got ${loaded.name}: remove it first`,
  });
}

const knowing = (household: string): Play["known"] => ({
  household,
  tasters: new Map(),
  whiskeys: new Map(),
  vessels: new Map(),
  batches: new Map(),
  rests: new Map(),
  recipes: new Map(),
  transfers: new Map(),
  names: new Map(),
});

async function marked(records: Records, id: string): Promise<HouseholdRow> {
  const old = await knownHousehold(records, id);
  const row = changed(old, new Date(old.updatedAt), { demo: true });
  if (!(await records.replace("household", row))) staleEdit("household", old.version, row.version);
  return row;
}
