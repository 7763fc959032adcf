import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const another = "f".repeat(64);

eachDatabase((database) => {
  describe(`pouring (${database})`, () => {
    const ready = async (tasters = 2) => {
      const house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters });
      const made = await setFlight(shelf, [0, 1, 1], { distractors: [2], pourMl: 12.5 });
      const at = { household: shelf.household, flight: made.flight.id };
      return {
        house,
        client: house.client,
        shelf,
        at,
        host: made.hostToken,
        pourer: made.pourerToken ?? "",
        [Symbol.asyncDispose]: () => house.close(),
      };
    };

    test("F3 the pourer's token opens the list of what goes into which coded glass, and its sums", async () => {
      await using evening = await ready();
      const { client, at, pourer, shelf } = evening;
      const list = await client("getPourList", { at, token: pourer });
      expect(list.tasters.map(({ taster }) => taster)).toEqual(["Taster 1", "Taster 2"]);
      for (const { glasses } of list.tasters) {
        expect(glasses.map(({ position }) => position)).toEqual([1, 2, 3]);
        const [one = "", two = ""] = shelf.vesselIds;
        expect(glasses.map(({ vesselId }) => vesselId).toSorted()).toEqual([one, two, two].toSorted());
      }
      const totals = new Map(list.totals.map(({ vesselId, ml }) => [vesselId, ml]));
      expect(totals).toEqual(
        new Map([
          [shelf.vesselIds[0], 25],
          [shelf.vesselIds[1], 50],
        ]),
      );
    });

    test("F3, F14 no other token opens it: not the host's, not a taster's, none", async () => {
      await using evening = await ready();
      const { client, at, host, shelf } = evening;
      const [taken] = await takeSheets(shelf, at.flight);
      expect(await refusalOf(client("getPourList", { at }))).toMatchObject({
        status: 401,
        codes: ["token_needed"],
      });
      for (const token of [host, taken?.token ?? "", another]) {
        const no = await refusalOf(client("getPourList", { at, token }));
        expect(no).toMatchObject({ status: 403, codes: ["token_wrong"] });
      }
    });

    test("F3 the list is closed by the reveal", async () => {
      await using evening = await ready();
      const { client, at, host, pourer } = evening;
      await client("markPoured", { at, token: pourer });
      expect((await client("getPourList", { at, token: pourer })).tasters).toHaveLength(2);
      await client("revealFlight", { at, token: host, body: { closeOpenSheets: true } });
      const no = await refusalOf(client("getPourList", { at, token: pourer }));
      expect(no).toMatchObject({ status: 409, codes: ["already_revealed"] });
    });

    test("F6 poured is said once, with the pourer's token", async () => {
      await using evening = await ready();
      const { client, at, host, pourer } = evening;
      expect((await refusalOf(client("markPoured", { at, token: host }))).status).toBe(403);
      const flight = await client("markPoured", { at, token: pourer });
      expect(flight).toMatchObject({ state: "tasting", pouredAt: "2026-11-25T18:00:00.000Z" });
      const again = await refusalOf(client("markPoured", { at, token: pourer }));
      expect(again).toMatchObject({ status: 409, codes: ["flight_poured"] });
    });

    test("F4 alone, the taster's token says it, and there is no pour list", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const made = await setFlight(shelf, [0, 1], { pouring: "alone", pourer: null });
      expect(made.pourerToken).toBeNull();
      const at = { household: shelf.household, flight: made.flight.id };
      const [taken] = await takeSheets(shelf, at.flight);
      for (const token of [made.hostToken, taken?.token ?? ""]) {
        expect((await refusalOf(house.client("getPourList", { at, token }))).codes).toEqual(["token_wrong"]);
      }
      const flight = await house.client("markPoured", { at, token: taken?.token ?? "" });
      expect(flight.state).toBe("tasting");
    });

    test("F6 calling off destroys the key and frees what was kept", async () => {
      await using evening = await ready();
      const { house, client, at, host, pourer, shelf } = evening;
      for (const token of [pourer, another]) {
        expect((await refusalOf(client("callOffFlight", { at, token }))).status).toBe(403);
      }
      expect(await client("callOffFlight", { at, token: host })).toMatchObject({ state: "called off" });
      const rows = await house.store.transaction((records) => records.list("flightKey", shelf.household));
      expect(rows).toEqual([]);
      const { items } = await client("listVessels", { at: { household: shelf.household } });
      expect(items.map(({ keptMl }) => keptMl)).toEqual([0, 0, 0]);
      const list = await refusalOf(client("getPourList", { at, token: pourer }));
      expect(list).toMatchObject({ status: 409, codes: ["flight_called_off"] });
      const [sheet] = (await client("getFlight", { at })).sheets;
      const take = { ...at, sheet: sheet?.sheetId ?? "" };
      const taking = await refusalOf(client("takeSheet", { at: take, body: { ofLegalAge: true } }));
      expect(taking).toMatchObject({ status: 409, codes: ["flight_called_off"] });
      expect((await refusalOf(client("getFinding", { at }))).codes).toEqual(["not_revealed"]);
    });

    test("F6 what is poured is not called off", async () => {
      await using evening = await ready();
      const { client, at, host, pourer } = evening;
      await client("markPoured", { at, token: pourer });
      const no = await refusalOf(client("callOffFlight", { at, token: host }));
      expect(no).toMatchObject({ status: 409, codes: ["flight_poured"] });
    });

    test("F6 after 24 hours an unpoured flight is called off without a token, not a moment before", async () => {
      await using evening = await ready();
      const { house, client, at } = evening;
      house.clock.advance({ hours: 24, ms: -1 });
      expect((await refusalOf(client("callOffFlight", { at }))).status).toBe(401);
      house.clock.advance({ ms: 1 });
      expect((await client("callOffFlight", { at })).state).toBe("called off");
    });

    test("F11 a flight that is not poured is not revealed", async () => {
      await using evening = await ready(1);
      const { client, at, host } = evening;
      const no = await refusalOf(
        client("revealFlight", { at, token: host, body: { closeOpenSheets: true } }),
      );
      expect(no).toMatchObject({ status: 409, codes: ["flight_not_poured"] });
    });

    test("F11 the key opens only in the house that sealed it, and all stays as it was", async () => {
      await using evening = await ready(1);
      const { house, client, at, pourer, shelf } = evening;
      const [taken] = await takeSheets(shelf, at.flight);
      if (!taken) throw new Error("no sheet");
      await client("markPoured", { at, token: pourer });
      await lock(shelf, taken);
      const { sealKey } = house.house;
      const before = sealKey.slice();
      sealKey.fill(7);
      expect((await refusalOf(client("revealFlight", { at, body: {} }))).codes).toEqual(["key_unreadable"]);
      expect((await client("getFlight", { at })).state).toBe("tasting");
      sealKey.set(before);
      expect((await client("revealFlight", { at, body: {} })).flight.state).toBe("revealed");
    });
  });
});
