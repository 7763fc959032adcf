import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`F11 the reveal (${database})`, () => {
    const ready = async (lockedOf2: number) => {
      const house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      const made = await setFlight(shelf, [0, 1, 1], { distractors: [2], pourMl: 20 });
      const at = { household: shelf.household, flight: made.flight.id };
      const taken = await takeSheets(shelf, at.flight);
      await house.client("markPoured", { at, token: made.pourerToken ?? "" });
      for (const each of taken.slice(0, lockedOf2)) await lock(shelf, each);
      const { client } = house;
      return {
        house,
        client,
        shelf,
        at,
        taken,
        host: made.hostToken,
        [Symbol.asyncDispose]: () => house.close(),
      };
    };

    test("with every sheet locked it needs no token", async () => {
      await using evening = await ready(2);
      const { client, at } = evening;
      const { flight } = await client("revealFlight", { at, body: {} });
      expect(flight).toMatchObject({ state: "revealed", revealedAt: "2026-11-25T18:00:00.000Z" });
      expect(await refusalOf(client("revealFlight", { at, body: {} }))).toMatchObject({
        status: 409,
        codes: ["already_revealed"],
      });
    });

    test("of two at once exactly one wins, the other gets already_revealed, and it is poured once", async () => {
      await using evening = await ready(2);
      const { client, at, shelf } = evening;
      const both = await Promise.allSettled([1, 2, 3].map(() => client("revealFlight", { at, body: {} })));
      expect(both.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
      for (const lost of both.filter(({ status }) => status === "rejected")) {
        expect(lost).toMatchObject({ reason: { status: 409, issues: [{ code: "already_revealed" }] } });
      }
      const { items } = await client("listTransfers", { at: { household: shelf.household } });
      expect(items.filter(({ flightId }) => flightId === at.flight)).toHaveLength(2);
    });

    test("an open sheet refuses it unless the host closes it", async () => {
      await using evening = await ready(1);
      const { client, at, host, taken } = evening;
      expect(await refusalOf(client("revealFlight", { at, token: host, body: {} }))).toMatchObject({
        status: 409,
        issues: [{ code: "sheets_not_locked", path: ["closeOpenSheets"], received: 1 }],
      });
      const body = { closeOpenSheets: true };
      expect((await refusalOf(client("revealFlight", { at, body }))).codes).toEqual(["token_needed"]);
      const [, open] = taken;
      const asTaster = client("revealFlight", { at, token: open?.token ?? "", body });
      expect((await refusalOf(asTaster)).codes).toEqual(["token_wrong"]);
      const finding = await client("revealFlight", { at, token: host, body });
      expect(finding.sheets.map(({ state }) => state)).toEqual(["locked", "closed"]);
      expect(finding.leftOut).toContain(
        "Taster 2's sheet was not locked: its guesses, ranking and scores are not counted.",
      );
      const sheet = { ...at, sheet: open?.sheet.id ?? "" };
      const late = client("editSheet", {
        at: sheet,
        token: open?.token ?? "",
        body: { version: 3, guesses: [] },
      });
      expect(await refusalOf(late)).toMatchObject({ status: 409, codes: ["sheet_locked"] });
      expect((await client("getSheet", { at: sheet })).state, "open to all after the reveal").toBe("closed");
    });

    test("24 hours after the pouring no host's token is needed, a moment before it is", async () => {
      await using evening = await ready(0);
      const { house, client, at } = evening;
      const body = { closeOpenSheets: true };
      house.clock.advance({ hours: 24, ms: -1 });
      expect((await refusalOf(client("revealFlight", { at, body }))).status).toBe(401);
      house.clock.advance({ ms: 1 });
      expect((await refusalOf(client("revealFlight", { at, body: {} }))).codes).toEqual([
        "sheets_not_locked",
      ]);
      const finding = await client("revealFlight", { at, body });
      expect(finding.headline).toBe("No sheet was locked, so the glasses said nothing");
    });

    test("F5 the real transfers are posted by the reveal, one a vessel, and nothing is kept any more", async () => {
      await using evening = await ready(2);
      const { client, at, shelf } = evening;
      const home = { household: shelf.household };
      const before = await client("listTransfers", { at: home });
      expect(before.items.filter(({ flightId }) => flightId !== null)).toEqual([]);
      await client("revealFlight", { at, body: {} });
      const { items } = await client("listTransfers", { at: home });
      const poured = items.filter(({ flightId }) => flightId === at.flight);
      const vesselOf = (from: (typeof poured)[number]["from"]) =>
        from.kind === "vessel" ? from.vesselId : "";
      expect(new Map(poured.map(({ from, amount }) => [vesselOf(from), amount]))).toEqual(
        new Map([
          [shelf.vesselIds[0], { kind: "volume", ml: 40 }],
          [shelf.vesselIds[1], { kind: "volume", ml: 80 }],
        ]),
      );
      const vessels = await Promise.all(
        shelf.vesselIds.map((vessel) => client("getVessel", { at: { ...home, vessel } })),
      );
      expect(vessels.map(({ keptMl }) => keptMl)).toEqual([0, 0, 0]);
      expect(vessels.map(({ contents }) => Math.round(contents.volumeMl))).toEqual([4960, 4920, 5000]);
      expect(
        vessels.map(({ sealed }) => sealed),
        "S3",
      ).toEqual([false, false, true]);
    });

    test("two sealed flights on one bottle keep their own, and each reveal pours its own", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { client, household } = shelf;
      for (const name of ["one", "two"]) {
        const made = await setFlight(shelf, [0, 1], { name, pourMl: 60 });
        const at = { household, flight: made.flight.id };
        const [taken] = await takeSheets(shelf, at.flight);
        await client("markPoured", { at, token: made.pourerToken ?? "" });
        if (taken) await lock(shelf, taken);
      }
      const level = async () => {
        const { items } = await client("listVessels", { at: { household } });
        return items.map(({ keptMl, contents }) => [keptMl, Math.round(contents.volumeMl)]);
      };
      expect(await level()).toEqual([
        [120, 5000],
        [120, 5000],
      ]);
      const { items } = await client("listFlights", { at: { household } });
      await client("revealFlight", { at: { household, flight: items[0]?.id ?? "" }, body: {} });
      expect(await level()).toEqual([
        [60, 4940],
        [60, 4940],
      ]);
      await client("revealFlight", { at: { household, flight: items[1]?.id ?? "" }, body: {} });
      expect(await level()).toEqual([
        [0, 4880],
        [0, 4880],
      ]);
    });
  });
});
