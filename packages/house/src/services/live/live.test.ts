import { eachDatabase, openDatabase, sha256, temporaryDatabase, temporaryHouse } from "@partsproof/testkit";
import { openHouse } from "@partsproof/house";
import { describe, expect, test } from "vitest";
import { createClient, follow, type LiveMessage } from "../../protocol/index.ts";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { followUntil } from "../fixtures/network.ts";

const what = (messages: readonly LiveMessage[]): string[] =>
  messages.map((m) => (m.kind === "state" ? `state ${m.state}` : m.what));
const ends = (word: string) => (messages: readonly LiveMessage[]) => what(messages).at(-1) === word;

eachDatabase((database) => {
  describe(`live events (${database})`, () => {
    test("L1 an evening in events: nothing of them is about content", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      const { flight, hostToken, pourerToken } = await setFlight(shelf, [0, 1, 2]);
      const at = { household: shelf.household, flight: flight.id };
      const following = followUntil(house.fetch, at, ends("glass opened"));
      const taken = await takeSheets(shelf, flight.id);
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      const [one, two] = taken;
      if (!one || !two) throw new Error("two sheets are needed");
      const sheetAt = { ...at, sheet: one.sheet.id };
      await house.client("atGlass", { at: sheetAt, token: one.token, body: { position: 2 } });
      const code = one.sheet.glasses[1]?.code ?? "";
      await house.client("editSheet", {
        at: sheetAt,
        token: one.token,
        body: { version: one.sheet.version, guesses: [{ code, nameId: shelf.nameIds[1] ?? "" }] },
      });
      await lock(shelf, one);
      await house.client("revealFlight", { at, token: hostToken, body: { closeOpenSheets: true } });
      await house.client("openGlass", { at, body: { count: 1 } });
      const messages = await following;
      expect(what(messages)).toEqual([
        "state pouring",
        "seat taken",
        "seat taken",
        "poured",
        "at a glass",
        "locked",
        "closed",
        "closed",
        "revealed",
        "glass opened",
      ]);
      expect(messages.slice(1).map(({ seq }) => seq)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
      expect(messages[4]).toMatchObject({ sheetId: one.sheet.id, number: 2 });
      // The sheet, and then the flight as a whole: its closing stands.
      expect(messages[6]).toMatchObject({ sheetId: two.sheet.id });
      expect(messages[7]).toMatchObject({ sheetId: null });
      const text = JSON.stringify(messages);
      for (const { code: any } of [...one.sheet.glasses, ...two.sheet.glasses]) {
        expect(text).not.toContain(`"${any}"`);
      }
      for (const secret of [...shelf.nameIds, ...shelf.vesselIds, one.token])
        expect(text).not.toContain(secret);
    });

    test("L3 a stream goes on after the event that was seen last, or tells how the table stands", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
      const { flight, pourerToken } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id };
      const [one] = await takeSheets(shelf, flight.id);
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      const sheetAt = { ...at, sheet: one?.sheet.id ?? "" };
      await house.client("atGlass", { at: sheetAt, token: one?.token ?? "", body: { position: 2 } });
      const many = (n: number) => (messages: readonly LiveMessage[]) => messages.length === n;
      expect(what(await followUntil(house.fetch, at, many(3), { after: 1 }))).toEqual([
        "seat taken",
        "poured",
        "at a glass",
      ]);
      const [state] = await followUntil(house.fetch, at, many(1));
      expect(state).toMatchObject({
        kind: "state",
        seq: 4,
        state: "tasting",
        opened: 0,
        seats: [{ sheetId: one?.sheet.id, state: "open", position: 2 }, { position: null }],
      });
      const [ahead] = await followUntil(house.fetch, at, many(1), { after: 99 });
      expect(ahead).toMatchObject({ kind: "state", seq: 4 });
    });

    test("L3 of a flight with more events than are kept, a stream from before them begins anew", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { flight, hostToken } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id };
      await house
        .client("markPoured", { at, token: (await setFlight(shelf, [0, 1])).pourerToken ?? "" })
        .catch(() => undefined);
      const { sheets } = flight;
      const sheetAt = { ...at, sheet: sheets[0]?.sheetId ?? "" };
      for (let i = 0; i < 310; i += 1) {
        await house.client("takeSheet", { at: sheetAt, body: { ofLegalAge: true } });
        await house.client("freeSheet", { at: sheetAt, token: hostToken });
      }
      const rows = await house.store.transaction((records) =>
        records.list("liveEvent", shelf.household, { where: { flightId: flight.id } }),
      );
      expect(rows.length).toBeLessThanOrEqual(600);
      const first = (after: number) => followUntil(house.fetch, at, () => true, { after });
      expect((await first(5))[0]?.kind).toBe("state");
      expect((await first(615))[0]).toMatchObject({ kind: "event", seq: 616 });
    }, 120_000);

    test("L7 a guest's token holds 20 streams and no more; another's and the owner's are not counted with them", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
      const { flight } = await setFlight(shelf, [0, 1]);
      const [one, two] = await takeSheets(shelf, flight.id);
      const live = `http://house.test/api/households/${shelf.household}/flights/${flight.id}/live`;
      const guest = { from: "network", address: "192.0.2.9", secure: false } as const;
      const open = async (token?: string): Promise<Response> =>
        token === undefined
          ? house.fetch(new Request(live))
          : house.fetch(new Request(live, { headers: { authorization: `Bearer ${token}` } }), guest);
      const held: Response[] = [];
      for (let i = 0; i < 20; i += 1) held.push(await open(one?.token));
      expect(new Set(held.map(({ status }) => status))).toEqual(new Set([200]));
      expect((await open(one?.token)).status).toBe(429);
      held.push(await open(two?.token), await open());
      expect(held.slice(20).map(({ status }) => status)).toEqual([200, 200]);
      await held[0]?.body?.cancel();
      held[0] = await open(one?.token);
      expect(held[0].status).toBe(200);
      for (const { body } of held) await body?.cancel();
    });

    test("L2 what another process writes is told", async () => {
      const place = await temporaryDatabase(database);
      const open = async () => {
        const { store } = await openDatabase(place.place);
        return openHouse({
          store,
          clock: { now: () => new Date() },
          random: { bytes: (n) => crypto.getRandomValues(new Uint8Array(n)) },
          sealKey: new Uint8Array(32),
          sha256,
        });
      };
      const [mine, other] = [await open(), await open()];
      try {
        const shelf = await eveningShelf(createClient(mine.fetch, "http://house.test"), {
          whiskeys: 2,
          tasters: 1,
        });
        const { flight } = await setFlight(shelf, [0, 1]);
        const at = { household: shelf.household, flight: flight.id };
        const begun = Promise.withResolvers<void>();
        const following = followUntil(mine.fetch, at, (messages) => {
          begun.resolve();
          return ends("seat taken")(messages);
        });
        await begun.promise;
        const [sheet] = flight.sheets;
        const elsewhere = createClient(other.fetch, "http://house.test");
        await elsewhere("takeSheet", {
          at: { ...at, sheet: sheet?.sheetId ?? "" },
          body: { ofLegalAge: true },
        });
        expect(what(await following)).toEqual(["state pouring", "seat taken"]);
      } finally {
        await mine.close();
        await other.close();
        await place.remove();
      }
    });
  });
});

test("L3 a stream whose network swallows everything ends for its reader, who comes back after the last event", async () => {
  let left = false;
  const silent = new ReadableStream<Uint8Array>({
    start: (out) => {
      const message = {
        kind: "event",
        seq: 4,
        what: "locked",
        at: "2026-11-25T18:00:00.000Z",
        sheetId: null,
        number: null,
      };
      out.enqueue(new TextEncoder().encode(`id: 4\nevent: event\ndata: ${JSON.stringify(message)}\n\n`));
    },
    cancel: () => {
      left = true;
    },
  });
  const seqs: number[] = [];
  const at = { household: "h", flight: "f" };
  for await (const { seq } of follow(async () => new Response(silent), "http://house.test", {
    at,
    silenceMs: 50,
  }))
    seqs.push(seq);
  expect([seqs, left]).toEqual([[4], true]);
});
