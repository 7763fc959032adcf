import { type Client, Refusal } from "@partsproof/house/protocol";
import { temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { Keeper, type KeeperOptions, type Outbox, type Unsaved } from "./keeper.ts";
import { guessKey, noteKey, RANKING, scoreKey } from "./sheet-fields.ts";

let drawn = 0;
const drawKey = (): string => `a-key-of-this-test-${String((drawn += 1)).padStart(8, "0")}`;
const FAST = { restMs: 5, retryMs: [5] };

/** A real house with a poured flight of three glasses, and its one sheet taken. */
async function evening() {
  const house = await temporaryHouse("sqlite");
  const { client } = house;
  const { id: household } = await client("addHousehold", { body: { name: "Kept" } });
  const at = { household };
  const vesselIds: string[] = [];
  for (const [i, name] of ["Tarn", "Skerry", "Ember"].entries()) {
    const strength = { basis: "abv20" as const, value: 40 + i };
    const whiskey = await client("addWhiskey", { at, body: { maker: "Saltreach", name, strength } });
    vesselIds.push((await client("addBottle", { at, body: { whiskeyId: whiskey.id } })).id);
  }
  const taster = await client("addTaster", { at, body: { name: "Ana" } });
  const made = await client("addFlight", {
    at,
    body: {
      name: "Tuesday",
      pouring: "someone else",
      pourer: "Pat",
      pourMl: 10,
      tasterIds: [taster.id],
      glasses: vesselIds.map((vesselId) => ({ vesselId })),
    },
  });
  const flight = { household, flight: made.flight.id };
  await client("markPoured", { at: flight, token: made.pourerToken ?? "" });
  const sheetAt = { ...flight, sheet: made.flight.sheets[0]?.sheetId ?? "" };
  const { token } = await client("takeSheet", { at: sheetAt, body: { ofLegalAge: true } });
  return { house, client, at: sheetAt, token };
}

type Evening = Awaited<ReturnType<typeof evening>>;

async function keeperOf(
  { client, at, token }: Evening,
  more: Partial<KeeperOptions> = {},
  send: (client: Client, entry: Parameters<KeeperOptions["send"]>[0]) => ReturnType<KeeperOptions["send"]> = (
    via,
    body,
  ) => via("addEntry", { at, token, body }),
) {
  const sheet = await client("getSheet", { at, token });
  const stored: { outbox: Outbox | null } = { outbox: null };
  const keeper = new Keeper({
    sheet,
    send: (edit) => send(client, edit),
    reread: () => client("getSheet", { at, token }),
    store: (outbox) => {
      stored.outbox = outbox;
    },
    drawKey,
    ...FAST,
    ...more,
  });
  return { keeper, stored, codes: sheet.glasses.map(({ code }) => code) };
}

const unreachable = new Refusal(0, [
  { code: "house_unreachable", path: [], limit: "an answer", received: null, message: "no answer" },
]);

describe("a keeper against a real house", { timeout: 60_000 }, () => {
  test("keeps notes, score, guess and ranking, and reads them back", async () => {
    const table = await evening();
    await using _ = table.house;
    const { keeper, stored, codes } = await keeperOf(table);
    const [one = "", two = "", three = ""] = codes;
    const name = keeper.see().sheet.namesOnOffer[0]?.nameId ?? "";
    keeper.set(noteKey(one, "first", "nose"), "pear");
    keeper.set(scoreKey(one), 81.5);
    keeper.set(guessKey(two), name);
    keeper.set(RANKING, [[two], [one, three]]);
    expect(keeper.see().state).toBe("waiting");
    expect(stored.outbox?.unsaved).toHaveLength(4);
    expect(await keeper.flush()).toBe(true);
    expect(keeper.see().state).toBe("kept");
    expect(stored.outbox).toBeNull();
    const kept = await table.client("getSheet", { at: table.at, token: table.token });
    expect(kept.notes[0]).toMatchObject({ code: one, first: { nose: "pear" }, score: 81.5 });
    expect(kept.guesses.find(({ code }) => code === two)?.nameId).toBe(name);
    expect(kept.ranking).toEqual([[two], [one, three]]);
  });

  test("two phones on one sheet: both are shown, nothing is sent before the choice, and the choice is kept", async () => {
    const table = await evening();
    await using _ = table.house;
    const written = async () => {
      const { notes } = await table.client("getSheet", { at: table.at, token: table.token });
      return notes.map(({ first }) => [first.nose, first.palate]);
    };
    const phone = await keeperOf(table);
    const [one = "", two = ""] = phone.codes;
    const tablets = [await keeperOf(table), await keeperOf(table), await keeperOf(table)] as const;
    phone.keeper.set(noteKey(one, "first", "nose"), "pear");
    phone.keeper.set(noteKey(two, "first", "nose"), "smoke");
    await phone.keeper.flush();
    const before = await written();
    for (const { keeper } of tablets) {
      keeper.set(noteKey(one, "first", "palate"), "pepper");
      keeper.set(noteKey(two, "first", "nose"), "tar");
      expect(await keeper.flush()).toBe(false);
      expect(keeper.see().state).toBe("clash");
      expect(keeper.see().clash?.lines).toEqual([
        { key: noteKey(one, "first", "palate"), here: "pepper", there: "" },
        { key: noteKey(two, "first", "nose"), here: "tar", there: "smoke" },
        { key: noteKey(one, "first", "nose"), here: "", there: "pear" },
      ]);
      expect(await written()).toEqual(before);
    }
    tablets[0].keeper.choose("there");
    expect(await tablets[0].keeper.flush()).toBe(true);
    expect(await written()).toEqual(before);
    tablets[1].keeper.choose("both");
    expect(await tablets[1].keeper.flush()).toBe(true);
    expect(await written()).toEqual([
      ["pear", "pepper"],
      ["smoke\ntar", ""],
    ]);
    tablets[2].keeper.choose("here");
    // The second tablet wrote meanwhile, so it is asked again.
    expect(await tablets[2].keeper.flush()).toBe(false);
    tablets[2].keeper.choose("here");
    expect(await tablets[2].keeper.flush()).toBe(true);
    expect(await written()).toEqual([
      ["pear", "pepper"],
      ["tar", ""],
    ]);
  });

  test("a guess made impossible elsewhere is taken back and told, and the notes are saved all the same", async () => {
    const table = await evening();
    await using _ = table.house;
    const phone = await keeperOf(table);
    const tablet = await keeperOf(table);
    const [one = "", two = ""] = phone.codes;
    const name = phone.keeper.see().sheet.namesOnOffer[0]?.nameId ?? "";
    phone.keeper.set(guessKey(one), name);
    await phone.keeper.flush();
    tablet.keeper.set(guessKey(two), name);
    tablet.keeper.set(noteKey(two, "first", "nose"), "tar");
    expect(await tablet.keeper.flush()).toBe(false);
    tablet.keeper.choose("here");
    expect(await tablet.keeper.flush()).toBe(true);
    const kept = await table.client("getSheet", { at: table.at, token: table.token });
    expect(kept.guesses.map(({ nameId }) => nameId)).toEqual([name, null, null]);
    expect(kept.notes[0]?.first.nose).toBe("tar");
    expect(tablet.keeper.see().notices.join()).toContain(`The guess for glass ${two} is taken back`);
  });

  test("an answer that was lost: the entry is sent again under its key and written once, also by the next visit", async () => {
    const table = await evening();
    await using _ = table.house;
    const lost: KeeperOptions["send"] = async (body) => {
      await table.client("addEntry", { at: table.at, token: table.token, body });
      throw unreachable;
    };
    const phone = await keeperOf(table, { send: lost, retryMs: [60_000] });
    const [one = ""] = phone.codes;
    phone.keeper.set(noteKey(one, "first", "nose"), "pear");
    expect(await phone.keeper.flush()).toBe(false);
    phone.keeper.set(noteKey(one, "first", "palate"), "salt");
    phone.keeper.stop();
    const { outbox } = phone.stored;
    expect(outbox?.sent?.body.after).toBe(0);
    const later = await keeperOf(table, { load: () => Promise.resolve(outbox) });
    expect(await later.keeper.flush()).toBe(true);
    expect(later.keeper.see().clash).toBeNull();
    const { items } = await table.client("listEntries", { at: table.at, token: table.token });
    expect(items.map(({ notes }) => [notes?.[0]?.first.nose, notes?.[0]?.first.palate])).toEqual([
      ["pear", ""],
      ["pear", "salt"],
    ]);
    expect(later.stored.outbox).toBeNull();
  });

  test("an unreachable house: stuck, stored, tried again, saved", async () => {
    const table = await evening();
    await using _ = table.house;
    let left = 2;
    const { keeper, stored, codes } = await keeperOf(table, {}, (client, body) => {
      left -= 1;
      if (left >= 0) return Promise.reject(unreachable);
      return client("addEntry", { at: table.at, token: table.token, body });
    });
    keeper.set(noteKey(codes[0] ?? "", "first", "nose"), "pear");
    expect(await keeper.flush()).toBe(false);
    expect(keeper.see().state).toBe("stuck");
    expect(keeper.see().refusal?.status).toBe(0);
    expect(stored.outbox?.unsaved).toEqual([
      { key: noteKey(codes[0] ?? "", "first", "nose"), was: "", is: "pear" },
    ]);
    await expect.poll(() => keeper.see().state).toBe("kept");
    const { notes } = await table.client("getSheet", { at: table.at, token: table.token });
    expect(notes[0]?.first.nose).toBe("pear");
  });

  test("what an earlier visit left unsaved is saved on the next, joined with what came since", async () => {
    const table = await evening();
    await using _ = table.house;
    const phone = await keeperOf(table);
    const [one = ""] = phone.codes;
    phone.keeper.set(noteKey(one, "first", "nose"), "smoke");
    await phone.keeper.flush();
    const unsaved: Unsaved = [{ key: noteKey(one, "first", "palate"), was: "", is: "pepper" }];
    const later = await keeperOf(table, { load: () => Promise.resolve({ unsaved, sent: null }) });
    later.keeper.start();
    await expect.poll(() => later.keeper.see().sheet.entries).toBe(2);
    await expect.poll(() => later.keeper.see().state).toBe("kept");
    expect(later.keeper.see().notices.join()).toContain("is back, and being sent");
    const { notes } = await table.client("getSheet", { at: table.at, token: table.token });
    expect(notes[0]?.first).toEqual({ nose: "smoke", palate: "pepper", finish: "" });
  });

  test("a locked sheet: the house's own words are shown and nothing more is tried", async () => {
    const table = await evening();
    await using _ = table.house;
    const { keeper, codes } = await keeperOf(table);
    await table.client("lockSheet", {
      at: table.at,
      token: table.token,
      body: { version: keeper.see().sheet.version },
    });
    keeper.set(noteKey(codes[0] ?? "", "first", "nose"), "too late");
    expect(await keeper.flush()).toBe(false);
    expect(keeper.see().refusal?.issues[0]?.code).toBe("sheet_locked");
    keeper.stop();
  });

  test("typing without a pause is saved all the same", async () => {
    const table = await evening();
    await using _ = table.house;
    const sent: number[] = [];
    const { keeper, codes } = await keeperOf(table, { restMs: 60_000, longestMs: 60 }, (client, body) => {
      sent.push(body.after);
      return client("addEntry", { at: table.at, token: table.token, body });
    });
    // Never as long as restMs without a change.
    const type = (n: number): void =>
      keeper.set(noteKey(codes[0] ?? "", "first", "nose"), "pear ".repeat((n % 9) + 1));
    let n = 0;
    const typing = setInterval(() => type((n += 1)), 10);
    await expect.poll(() => sent.length, { timeout: 20_000 }).toBeGreaterThan(1);
    clearInterval(typing);
    keeper.stop();
    await keeper.flush();
  });
});
