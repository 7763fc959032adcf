import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { JoiningMade, LiveMessage } from "../../protocol/index.ts";
import { type EveningShelf, eveningShelf, setFlight } from "../fixtures/evening.ts";
import { device, followUntil } from "../fixtures/network.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const key = (n: number): string => `device-key-${String(n).padStart(16, "0")}`;

interface Table {
  readonly house: TemporaryHouse;
  readonly shelf: EveningShelf;
  readonly at: { readonly household: string; readonly flight: string };
  readonly hostToken: string;
  readonly pourerToken: string;
  readonly sheetIds: readonly string[];
  readonly open: (role: "taster" | "watcher" | "pourer", minutes?: number) => Promise<JoiningMade>;
}

/** A flight with one taster of the household and two seats. */
async function table(house: TemporaryHouse): Promise<Table> {
  const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 1 });
  const { flight, hostToken, pourerToken } = await setFlight(shelf, [0, 1, 2], { seats: 2 });
  const at = { household: shelf.household, flight: flight.id };
  return {
    house,
    shelf,
    at,
    hostToken,
    pourerToken: pourerToken ?? "",
    sheetIds: flight.sheets.map(({ sheetId }) => sheetId),
    open: (role, minutes = 180) =>
      house.client("openJoining", { at, token: hostToken, body: { role, minutes } }),
  };
}

const byLink = ({ link }: JoiningMade) => ({ kind: "link", link }) as const;
const byCode = (code: string | null) => ({ kind: "code", code: code ?? "" }) as const;
const guest = (n: number, name: string) => ({ key: key(n), name, ofLegalAge: true });

eachDatabase((database) => {
  describe(`joining a flight (${database})`, () => {
    test("J1 the host opens a way in; link and code are told once and kept as keyed hashes", async () => {
      await using house = await temporaryHouse(database);
      const { at, open, hostToken } = await table(house);
      const made = await open("taster");
      expect(made).toMatchObject({ role: "taster", link: expect.stringMatching(/^[0-9a-f]{64}$/) });
      expect(made.code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
      expect(Date.parse(made.expiresAt) - house.clock.now().getTime()).toBe(180 * 60_000);
      const stored = JSON.stringify(await house.store.transaction((r) => r.list("joining", at.household)));
      expect(stored).not.toContain(made.link);
      expect(stored.toUpperCase()).not.toContain((made.code ?? "").replace("-", ""));
      const without = house.client("openJoining", { at, body: { role: "taster" } });
      expect((await refusalOf(without)).status).toBe(401);
      const listed = await house.client("listJoinings", { at, token: hostToken });
      expect(listed.open).toEqual([{ id: made.id, role: "taster", expiresAt: made.expiresAt }]);
      expect((await open("pourer")).code).toBeNull();
    });

    test("J2 a code is read as it is typed: small letters, spaces, O for 0, I and L for 1", async () => {
      await using house = await temporaryHouse(database);
      const { open } = await table(house);
      const { code } = await open("watcher");
      const typed = ` ${(code ?? "").toLowerCase().replaceAll("0", "O").replaceAll("1", "l").replace("-", " ")} `;
      const { client } = device(house);
      expect((await client("askJoining", { body: { ticket: byCode(typed) } })).role).toBe("watcher");
    });

    test("J3 a way in ends: at its time, when closed, when another is opened, at the reveal", async () => {
      await using house = await temporaryHouse(database);
      const { at, open, hostToken, pourerToken } = await table(house);
      const ask = (made: JoiningMade) => house.client("askJoining", { body: { ticket: byLink(made) } });
      const late = await open("taster", 5);
      house.clock.advance({ ms: 5 * 60_000 });
      expect((await refusalOf(ask(late))).codes).toEqual(["joining_unknown"]);
      const closed = await open("taster");
      await ask(closed);
      await house.client("closeJoining", { at: { ...at, joining: closed.id }, token: hostToken });
      expect((await refusalOf(ask(closed))).codes).toEqual(["joining_unknown"]);
      const replaced = await open("taster");
      const last = await open("taster");
      expect((await refusalOf(ask(replaced))).codes).toEqual(["joining_unknown"]);
      await ask(last);
      await house.client("markPoured", { at, token: pourerToken });
      await house.client("revealFlight", { at, token: hostToken, body: { closeOpenSheets: true } });
      expect((await refusalOf(ask(last))).codes).toEqual(["joining_unknown"]);
    });

    test("J4 wrong codes are answered alike, wait longer and longer, and shut the codes of the house in the end", async () => {
      await using house = await temporaryHouse(database);
      const { open } = await table(house);
      const made = await open("taster");
      const ask = (address: string, code: string) =>
        device(house, address).client("askJoining", { body: { ticket: byCode(code) } });
      const near = `${(made.code ?? "").slice(0, 8)}${made.code?.endsWith("0") ? "2" : "0"}`;
      const answers = [];
      for (const code of ["0000-0000", near, "", "x", made.link.slice(0, 40)]) {
        answers.push(await refusalOf(ask("192.0.2.9", code)));
      }
      expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
      expect(answers[0]).toMatchObject({ status: 404, codes: ["joining_unknown"] });
      expect((await refusalOf(ask("192.0.2.9", made.code ?? ""))).status).toBe(429);
      await ask("192.0.2.10", made.code ?? "");
      for (let i = 0; i < 95; i += 1) await refusalOf(ask(`198.51.100.${i}`, "0000-0000"));
      expect((await refusalOf(ask("203.0.113.1", made.code ?? ""))).status).toBe(429);
      // A link cannot be guessed and still opens; the host's own machine waits for nothing.
      await device(house, "203.0.113.1").client("askJoining", { body: { ticket: byLink(made) } });
      await house.client("askJoining", { body: { ticket: byCode(made.code) } });
      const { items } = await house.client("listTrail");
      expect(items.filter(({ what }) => what === "join codes held back")).toHaveLength(1);
      house.clock.advance({ hours: 1 });
      await ask("203.0.113.1", made.code ?? "");
    }, 60_000);

    test("J5 a guest takes a seat and names it; it is theirs, and no name stands twice at a table", async () => {
      await using house = await temporaryHouse(database);
      const { at, open, sheetIds } = await table(house);
      const made = await open("taster");
      const phone = device(house);
      const ticket = byLink(made);
      const shown = await phone.client("askJoining", { body: { ticket } });
      expect(shown.seats).toEqual([
        { sheetId: sheetIds[0], taster: "Taster 1", named: true },
        { sheetId: sheetIds[1], taster: "Seat 1", named: false },
        { sheetId: sheetIds[2], taster: "Seat 2", named: false },
      ]);
      const joined = await phone.client("join", { body: { ticket, ...guest(1, "Wren") } });
      expect(joined).toMatchObject({
        role: "taster",
        name: "Wren",
        sheet: { id: sheetIds[1], taster: "Wren" },
      });
      const sheetAt = { ...at, sheet: sheetIds[1] ?? "" };
      expect((await phone.client("getSheet", { at: sheetAt, token: joined.token })).state).toBe("open");
      const join = (n: number, name: string, sheetId: string | null = null) =>
        phone.client("join", { body: { ticket, ...guest(n, name), sheetId } });
      expect((await refusalOf(join(2, "wren "))).codes).toEqual(["name_taken"]);
      expect((await refusalOf(join(2, "Taster 1"))).codes).toEqual(["name_taken"]);
      expect((await refusalOf(join(2, "Finch", sheetIds[1]))).codes).toEqual(["sheet_taken"]);
      // A seat with a name keeps it, whatever the guest says.
      expect((await join(3, "Somebody", sheetIds[0])).name).toBe("Taster 1");
      await join(4, "Finch");
      expect((await refusalOf(join(5, "Heron"))).codes).toEqual(["no_seat_free"]);
      // Guests do not stand among those who taste here every week.
      const { items } = await house.client("listTasters", { at: { household: at.household } });
      expect(items.map(({ name }) => name)).toEqual(["Taster 1"]);
    });

    test("J5 without the guest's word on legal age nobody joins", async () => {
      await using house = await temporaryHouse(database);
      const { open } = await table(house);
      for (const role of ["taster", "watcher", "pourer"] as const) {
        const ticket = byLink(await open(role));
        const join = house.client("join", { body: { ticket, ...guest(1, "Wren"), ofLegalAge: false } });
        expect(await refusalOf(join)).toMatchObject({ status: 422, codes: ["legal_age_needed"] });
      }
    });

    test("J5 a request sent again is the same guest with the same token; another phone's key is another", async () => {
      await using house = await temporaryHouse(database);
      const { open } = await table(house);
      const ticket = byLink(await open("taster"));
      const join = (n: number, name: string) => house.client("join", { body: { ticket, ...guest(n, name) } });
      const all = await Promise.all(Array.from({ length: 8 }, () => join(1, "Wren")));
      expect(new Set(all.map(({ token }) => token)).size).toBe(1);
      expect(new Set(all.map(({ sheet }) => sheet?.id)).size).toBe(1);
      expect((await join(2, "Finch")).token).not.toBe(all[0]?.token);
    });

    test("J6 the host revokes a guest: the token is dead, an open seat free, a stream over", async () => {
      await using house = await temporaryHouse(database);
      const { at, open, hostToken, sheetIds } = await table(house);
      const ticket = byLink(await open("taster"));
      const phone = device(house);
      const joined = await phone.client("join", { body: { ticket, ...guest(1, "Wren") } });
      const messages: LiveMessage[] = [];
      const following = followUntil(
        phone.door,
        at,
        (all) => {
          messages.splice(0, messages.length, ...all);
          return false;
        },
        { token: joined.token },
      );
      const { guests } = await house.client("listJoinings", { at, token: hostToken });
      expect(guests).toMatchObject([{ id: joined.guestId, name: "Wren", role: "taster", revokedAt: null }]);
      const revoke = { at: { ...at, guest: joined.guestId }, token: hostToken };
      const after = await house.client("revokeGuest", revoke);
      expect(after.guests[0]?.revokedAt).toBe(house.clock.now().toISOString());
      await following;
      expect(messages.at(-1)).toMatchObject({ what: "seat freed", sheetId: sheetIds[1] });
      const sheetAt = { ...at, sheet: sheetIds[1] ?? "" };
      for (const call of [
        () => phone.client("getSheet", { at: sheetAt, token: joined.token }),
        () => phone.client("getFlight", { at, token: joined.token }),
        () => phone.client("watchFlight", { at, token: joined.token }),
      ]) {
        expect(await refusalOf(call())).toMatchObject({ status: 403, codes: ["token_wrong"] });
      }
      const again = house.client("join", { body: { ticket, ...guest(1, "Wren") } });
      expect((await refusalOf(again)).codes).toEqual(["guest_revoked"]);
      const seat = (await house.client("getFlight", { at })).sheets[1];
      expect(seat).toMatchObject({ state: "free" });
    });

    test("F3 a guest who pours sees the pour list and tastes nothing; the way in serves once", async () => {
      await using house = await temporaryHouse(database);
      const { at, open } = await table(house);
      const ticket = byLink(await open("pourer"));
      const phone = device(house);
      const same = phone.client("join", { body: { ticket, ...guest(1, "Taster 1") } });
      expect((await refusalOf(same)).codes).toEqual(["name_taken"]);
      const pours = await phone.client("join", { body: { ticket, ...guest(1, "Pat") } });
      expect((await phone.client("getPourList", { at, token: pours.token })).tasters).toHaveLength(3);
      const second = phone.client("join", { body: { ticket, ...guest(2, "Robin") } });
      expect((await refusalOf(second)).codes).toEqual(["joining_unknown"]);
      expect((await phone.client("join", { body: { ticket, ...guest(1, "Pat") } })).token).toBe(pours.token);

      const tasting = byLink(await open("taster"));
      const asPat = phone.client("join", { body: { ticket: tasting, ...guest(3, "pat") } });
      expect((await refusalOf(asPat)).codes).toEqual(["pourer_tastes"]);
      const asOther = phone.client("join", {
        token: pours.token,
        body: { ticket: tasting, ...guest(3, "Robin") },
      });
      expect((await refusalOf(asOther)).codes).toEqual(["pourer_tastes"]);
      const taster = await device(house, "192.0.2.20").client("join", {
        body: { ticket: tasting, ...guest(4, "Wren") },
      });
      const peek = device(house, "192.0.2.20").client("getPourList", { at, token: taster.token });
      expect((await refusalOf(peek)).status).toBe(403);
      await phone.client("markPoured", { at, token: pours.token });
      expect((await house.client("getFlight", { at })).state).toBe("tasting");
    });

    test("J8 a watcher sees who has locked and nothing else", async () => {
      await using house = await temporaryHouse(database);
      const { at, open, pourerToken, sheetIds } = await table(house);
      const phone = device(house);
      const watcher = await phone.client("join", {
        body: { ticket: byLink(await open("watcher")), ...guest(1, "Wren") },
      });
      const taster = await phone.client("join", {
        body: { ticket: byLink(await open("taster")), ...guest(2, "Finch") },
      });
      await house.client("markPoured", { at, token: pourerToken });
      const messages = followUntil(phone.door, at, (all) => all.length === 2, { token: watcher.token });
      const sheetAt = { ...at, sheet: taster.sheet?.id ?? "" };
      await phone.client("atGlass", { at: sheetAt, token: taster.token, body: { position: 1 } });
      await phone.client("lockSheet", { at: sheetAt, token: taster.token, body: { after: 0 } });
      const [state, event] = await messages;
      expect(state).toMatchObject({ kind: "state", seats: sheetIds.map(() => ({ position: null })) });
      expect(event).toMatchObject({ what: "locked", sheetId: taster.sheet?.id });
      const seen = await phone.client("watchFlight", { at, token: watcher.token });
      expect(Object.keys(seen).toSorted()).toEqual(["flightId", "flightName", "layout", "seats", "state"]);
      expect(seen.seats.map((seat) => [seat.taster, seat.state])).toEqual([
        ["Taster 1", "free"],
        ["Finch", "locked"],
        ["Seat 2", "free"],
      ]);
      for (const call of [
        () => phone.client("getFlight", { at, token: watcher.token }),
        () => phone.client("getSheet", { at: sheetAt, token: watcher.token }),
        () => phone.client("listEntries", { at: sheetAt, token: watcher.token }),
        () => phone.client("revealFlight", { at, token: watcher.token, body: {} }),
      ]) {
        expect(await refusalOf(call())).toMatchObject({ status: 403, codes: ["role_wrong"] });
      }
    });

    test("F2 seats make the key no different: as many orders and codes as tasters and seats", async () => {
      await using house = await temporaryHouse(database);
      const { at, pourerToken } = await table(house);
      const list = await house.client("getPourList", { at, token: pourerToken });
      expect(list.tasters.map(({ taster }) => taster)).toEqual(["Taster 1", "Seat 1", "Seat 2"]);
      const codes = list.tasters.flatMap(({ glasses }) => glasses.map(({ code }) => code));
      expect(new Set(codes).size).toBe(9);
      const [row] = await house.store.transaction((records) => records.list("flightKey", at.household));
      const plain = await eveningShelf(house.client, { whiskeys: 3, tasters: 3 });
      const named = await setFlight(plain, [0, 1, 2]);
      const [other] = await house.store.transaction((records) => records.list("flightKey", plain.household));
      expect(other?.flightId).toBe(named.flight.id);
      expect(row?.sealed?.length).toBe(other?.sealed?.length);
    });

    test("F2 a flight needs a taster or a seat, and has at most 12 of both", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
      const set = (seats: number, tasterIds: readonly string[]) =>
        setFlight(shelf, [0, 1], { seats, tasterIds: [...tasterIds], pourMl: 5 });
      expect((await refusalOf(set(0, []))).codes).toEqual(["taster_needed"]);
      expect((await refusalOf(set(11, shelf.tasterIds))).codes).toEqual(["too_many_tasters"]);
      expect((await set(10, shelf.tasterIds)).flight.sheets).toHaveLength(12);
      const alone = setFlight(shelf, [0, 1], { pouring: "alone", pourer: null, tasterIds: [], seats: 1 });
      expect((await refusalOf(alone)).codes).toEqual(["alone_needs_one"]);
    });
  });
});
