import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { type RouteName, routes, type StreamName } from "../../protocol/index.ts";
import { eveningShelf, setFlight, takeSheets } from "../fixtures/evening.ts";
import { device } from "../fixtures/network.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const PASSPHRASE = "four dry casks by the sea";
const WRONG = "four dry casks by the see";

async function ownedHouse(database: "sqlite" | "postgresql"): Promise<TemporaryHouse> {
  const house = await temporaryHouse(database);
  await house.client("setPassphrase", { body: { passphrase: PASSPHRASE } });
  return house;
}

async function signedIn(house: TemporaryHouse, address?: string) {
  const phone = device(house, address);
  await phone.client("signIn", { body: { passphrase: PASSPHRASE } });
  return phone;
}

const everyRoute = Object.keys(routes) as (RouteName | StreamName)[];

eachDatabase((database) => {
  describe(`the house's own door (${database})`, () => {
    test("D1 here nobody is asked; from the network a stranger opens no route of the owner or of a flight", async () => {
      await using house = await ownedHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { flight } = await setFlight(shelf, [0, 1]);
      expect((await house.client("getDoor")).you).toBe("here");
      const ids: Record<string, string> = { household: shelf.household, flight: flight.id };
      const opened: string[] = [];
      for (const [i, name] of everyRoute.entries()) {
        const { method, path } = routes[name];
        const filled = path.replace(/:([a-z]+)/g, (_, key: string) => ids[key] ?? flight.id);
        const request = new Request(`http://house.test${filled}`, {
          method,
          ...(method === "GET" ? {} : { body: "{}", headers: { "content-type": "application/json" } }),
        });
        // An address of its own each, so that none is only held back.
        const from = { from: "network", address: `192.0.2.${i + 1}`, secure: false } as const;
        const { status } = await house.fetch(request, from);
        if (status !== 401) opened.push(name);
      }
      const forAnyone = everyRoute.filter((name) => routes[name].opens === "anyone");
      expect(opened.toSorted()).toEqual(forAnyone.toSorted());
      expect(forAnyone.toSorted()).toEqual([
        "askJoining",
        "getDoor",
        "getFeed",
        "health",
        "join",
        "signIn",
        "signOut",
      ]);
    });

    test("D3 a token opens its own flight and nothing else", async () => {
      await using house = await ownedHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const [mine, other] = [await setFlight(shelf, [0, 1]), await setFlight(shelf, [1, 0])];
      const [taken] = await takeSheets(shelf, mine.flight.id);
      const token = taken?.token ?? "";
      const { client } = device(house);
      const at = { household: shelf.household, flight: mine.flight.id };
      expect((await client("getFlight", { at, token })).id).toBe(mine.flight.id);
      expect((await client("getSheet", { at: { ...at, sheet: taken?.sheet.id ?? "" }, token })).id).toBe(
        taken?.sheet.id,
      );
      const elsewhere = [
        { ...at, flight: other.flight.id },
        { ...at, flight: "0".repeat(26) },
        { ...at, household: "0".repeat(26) },
        { ...at, flight: "%00" },
      ];
      for (const there of elsewhere) {
        expect(await refusalOf(client("getFlight", { at: there, token }))).toMatchObject({
          status: 403,
          codes: ["token_wrong"],
        });
      }
      for (const name of ["getHousehold", "exportHousehold", "listFlights"] as const) {
        expect(await refusalOf(client(name, { at: { household: shelf.household }, token }))).toMatchObject({
          status: 401,
          codes: ["sign_in_needed"],
        });
      }
      const pour = client("getPourList", { at, token });
      expect(await refusalOf(pour)).toMatchObject({ status: 403, codes: ["role_wrong"] });
      expect((await client("getPourList", { at, token: mine.pourerToken ?? "" })).flightId).toBe(
        mine.flight.id,
      );
    });

    test("D4 a session opens the house; signing out, everywhere or by a new passphrase, ends it", async () => {
      await using house = await ownedHouse(database);
      const [one, two] = [await signedIn(house), await signedIn(house, "192.0.2.10")];
      expect(one.cookie()).toMatch(
        /^partsproof=[0-9a-f]{64}; Path=\/; Max-Age=604800; HttpOnly; SameSite=Strict$/,
      );
      const signed = device(house, "192.0.2.11", true);
      await signed.client("signIn", { body: { passphrase: PASSPHRASE } });
      expect(signed.cookie()).toMatch(/^__Host-partsproof=[0-9a-f]{64}; .*; SameSite=Strict; Secure$/);
      expect((await one.client("getDoor")).you).toBe("owner");
      expect((await one.client("listHouseholds")).items).toEqual([]);
      const stored = await house.store.transaction((records) => records.ofHouse.list("session"));
      expect(stored).toHaveLength(3);
      const secret = /[0-9a-f]{64}/.exec(one.cookie())?.[0] ?? "";
      expect(JSON.stringify(stored)).not.toContain(secret);

      await one.client("signOut");
      expect(one.cookie()).toMatch(/^partsproof=; Path=\/; Max-Age=0/);
      one.forget();
      const stale = device(house);
      expect((await refusalOf(stale.client("listHouseholds"))).codes).toEqual(["sign_in_needed"]);
      expect((await two.client("listHouseholds")).items).toEqual([]);
      await two.client("signOutEverywhere");
      expect((await refusalOf(signed.client("listHouseholds"))).status).toBe(401);

      const three = await signedIn(house);
      await house.client("setPassphrase", { body: { passphrase: `${PASSPHRASE}!` } });
      expect((await refusalOf(three.client("listHouseholds"))).status).toBe(401);
    });

    test("D4 a session ends when idle for 12 hours, and after 7 days whatever is done", async () => {
      await using house = await ownedHouse(database);
      const phone = await signedIn(house);
      house.clock.advance({ hours: 11.9 });
      await phone.client("listHouseholds");
      house.clock.advance({ hours: 11.9 });
      await phone.client("listHouseholds");
      house.clock.advance({ hours: 12.1 });
      expect((await refusalOf(phone.client("listHouseholds"))).codes).toEqual(["sign_in_needed"]);
      const other = await signedIn(house);
      for (let hours = 0; hours < 160; hours += 10) {
        house.clock.advance({ hours: 10 });
        await other.client("listHouseholds");
      }
      house.clock.advance({ hours: 8 });
      expect((await refusalOf(other.client("listHouseholds"))).codes).toEqual(["sign_in_needed"]);
    });

    test("D5 wrong passphrases wait longer and longer, not on the house's own machine", async () => {
      await using house = await ownedHouse(database);
      const phone = device(house);
      const wrong = () => refusalOf(phone.client("signIn", { body: { passphrase: WRONG } }));
      const right = () => phone.client("signIn", { body: { passphrase: PASSPHRASE } });
      for (let i = 0; i < 4; i += 1) expect((await wrong()).codes).toEqual(["passphrase_wrong"]);
      expect(await wrong()).toMatchObject({ status: 429, codes: ["too_many_tries"] });
      // Also the right one is not looked at before its time.
      expect((await refusalOf(right())).status).toBe(429);
      house.clock.advance({ ms: 1001 });
      expect((await wrong()).codes).toEqual(["passphrase_wrong"]);
      house.clock.advance({ ms: 1001 });
      expect((await wrong()).status).toBe(429);
      // Another address is not held back, nor is this machine, which can set a new one.
      await signedIn(house, "192.0.2.77");
      await house.client("signIn", { body: { passphrase: PASSPHRASE } });
      house.clock.advance({ hours: 1 });
      await right();
    }, 60_000);

    test("D5 a passphrase has 15 characters, may have any, and its letters may be composed either way", async () => {
      await using house = await temporaryHouse(database);
      const set = (passphrase: string) => house.client("setPassphrase", { body: { passphrase } });
      expect(await refusalOf(set("fourteen chars"))).toMatchObject({
        status: 422,
        issues: [{ code: "value_too_small", path: ["passphrase"], limit: "at least 15 characters" }],
      });
      // Neither is it said back, nor is a way in.
      const short = (await refusalOf(set("fourteen chars"))).issues;
      expect(short).toMatchObject([{ received: "14 characters" }]);
      for (const ticket of [
        { kind: "link" as const, link: "not-a-link" },
        { kind: "code" as const, code: "7".repeat(41) },
      ]) {
        const { issues } = await refusalOf(house.client("askJoining", { body: { ticket } }));
        expect(issues).toMatchObject([{ received: expect.stringMatching(/^\d+ characters$/) }]);
      }
      expect((await house.client("getDoor")).passphraseSet).toBe(false);
      await set("caf\u00e9 au port, s'il vous pla\u00eet");
      const phone = device(house);
      await phone.client("signIn", { body: { passphrase: "cafe\u0301 au port, s'il vous plai\u0302t" } });
      expect((await phone.client("getDoor")).you).toBe("owner");
      const [owner] = await house.store.transaction((records) => records.ofHouse.list("owner"));
      expect(owner?.passphrase).toMatch(/^scrypt:\d+:8:1:[\w-]{22}:[\w-]{43}$/);
    });

    test("D5 from the network a new passphrase needs the present one", async () => {
      await using house = await ownedHouse(database);
      const phone = await signedIn(house);
      const set = (present?: string) =>
        phone.client("setPassphrase", {
          body: { passphrase: `${PASSPHRASE}, twice`, ...(present === undefined ? {} : { present }) },
        });
      expect((await refusalOf(set())).codes).toEqual(["passphrase_wrong"]);
      expect((await refusalOf(set(WRONG))).codes).toEqual(["passphrase_wrong"]);
      await set(PASSPHRASE);
      expect((await refusalOf(phone.client("listHouseholds"))).status).toBe(401);
    });

    test("D9 a wrong present passphrase is in the trail too, and from which try on an address is held back", async () => {
      await using house = await ownedHouse(database);
      const phone = await signedIn(house);
      for (let i = 0; i < 5; i += 1) {
        const body = { passphrase: `${PASSPHRASE}, twice`, present: WRONG };
        expect((await refusalOf(phone.client("setPassphrase", { body }))).status).toBe(i < 4 ? 403 : 429);
      }
      const { items } = await house.client("listTrail");
      expect(items.map(({ what }) => what).toSorted()).toEqual([
        "passphrase set",
        "sign-in refused",
        "sign-in refused",
        "sign-in refused",
        "sign-in refused",
        "sign-ins held back",
        "signed in",
      ]);
    });

    test("D6 a session's request that changes something bears the house's own header", async () => {
      await using house = await ownedHouse(database);
      const phone = await signedIn(house);
      const add = (headers: Readonly<Record<string, string>>) =>
        phone.door(
          new Request("http://house.test/api/households", {
            method: "POST",
            headers: { "content-type": "application/json", ...headers },
            body: JSON.stringify({ name: "North" }),
          }),
        );
      const refused = await add({});
      expect(refused.status).toBe(403);
      expect(await refused.json()).toMatchObject({ issues: [{ code: "own_header_missing" }] });
      expect((await house.client("listHouseholds")).items).toEqual([]);
      expect((await add({ "x-partsproof": "1" })).status).toBe(201);
    });

    test("D7 what comes without a session or token is held back, by address; who has one is not", async () => {
      await using house = await ownedHouse(database);
      const owner = await signedIn(house);
      const stranger = device(house, "2001:db8:1:2::9");
      const statuses: number[] = [];
      for (let i = 0; i < 65; i += 1) {
        statuses.push((await refusalOf(stranger.client("listHouseholds"))).status);
      }
      expect(statuses.slice(0, 60)).toEqual(Array.from({ length: 60 }, () => 401));
      expect(statuses.slice(60)).toEqual(Array.from({ length: 5 }, () => 429));
      const sameNetwork = device(house, "2001:db8:1:2:ffff::1");
      expect((await refusalOf(sameNetwork.client("listHouseholds"))).status).toBe(429);
      const other = device(house, "2001:db8:1:3::9");
      expect((await refusalOf(other.client("listHouseholds"))).status).toBe(401);
      for (let i = 0; i < 65; i += 1) await owner.client("getDoor");
      house.clock.advance({ ms: 2000 });
      expect((await refusalOf(stranger.client("listHouseholds"))).status).toBe(401);
    });

    test("D9 the trail tells the owner what happened, and no secret", async () => {
      await using house = await ownedHouse(database);
      const phone = await signedIn(house);
      await refusalOf(device(house, "192.0.2.66").client("signIn", { body: { passphrase: WRONG } }));
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { flight, hostToken, pourerToken } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id };
      const [taken] = await takeSheets(shelf, flight.id);
      await house.client("freeSheet", { at: { ...at, sheet: taken?.sheet.id ?? "" }, token: hostToken });
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      await house.client("revealFlight", { at, token: hostToken, body: { closeOpenSheets: true } });
      await phone.client("signOut");
      const { items } = await house.client("listTrail");
      // Lines of one moment stand in no order: the clock of this test stands still.
      expect(items.map(({ what, address }) => `${what} ${address ?? "here"}`).toSorted()).toEqual([
        "flight closed and revealed here",
        "passphrase set here",
        "sheet freed here",
        "sign-in refused 192.0.2.66",
        "signed in 192.0.2.9",
        "signed out 192.0.2.9",
      ]);
      expect(items.find(({ what }) => what === "sheet freed")).toMatchObject({
        householdId: shelf.household,
        flightId: flight.id,
      });
      const text = JSON.stringify(items);
      for (const secret of [PASSPHRASE, WRONG, hostToken, pourerToken ?? "", taken?.token ?? ""]) {
        expect(text).not.toContain(secret);
      }
      expect((await refusalOf(device(house).client("listTrail"))).status).toBe(401);
    });

    test("D10 a stranger's request is read to 16 KiB, and no further than that", async () => {
      await using house = await ownedHouse(database);
      const from = { from: "network", address: "192.0.2.31", secure: false } as const;
      const asked = (body: string | ReadableStream<Uint8Array>, more: object = {}) => {
        const headers = { "content-type": "application/json", ...more };
        // Node asks for `duplex` where a body is a stream.
        const init: RequestInit & { duplex: "half" } = { method: "POST", headers, body, duplex: "half" };
        return house.fetch(new Request("http://house.test/api/door/sign-in", init), from);
      };
      const text = JSON.stringify({ passphrase: "x", more: "y".repeat(17_000) });
      const stated = await asked(text, { "content-length": String(text.length) });
      expect([stated.status, await stated.text()]).toEqual([413, expect.stringContaining("16384 bytes")]);
      expect((await asked(text)).status).toBe(413);
      // Without a stated length and without an end: it is not waited for.
      let sent = 0;
      const endless = new ReadableStream<Uint8Array>({
        pull: (out) => {
          sent += 1024;
          out.enqueue(new Uint8Array(1024).fill(32));
        },
      });
      expect((await asked(endless)).status).toBe(413);
      expect(sent).toBeLessThan(64 * 1024);
      // Its owner sends whole households, and says so here by a field that is not read.
      const owner = await signedIn(house, "192.0.2.32");
      const long = "z".repeat(17_000);
      const refused = await refusalOf(owner.client("addHousehold", { body: { name: long } }));
      expect(refused.status).toBe(422);
    });

    test("D8 nothing of the door is in an export", async () => {
      await using house = await ownedHouse(database);
      await signedIn(house);
      const { household } = await eveningShelf(house.client, { whiskeys: 1, tasters: 0 });
      const file = JSON.stringify(await house.client("exportHousehold", { at: { household } }));
      expect(file).not.toMatch(/scrypt|passphrase|session|trail/);
    });
  });
});
