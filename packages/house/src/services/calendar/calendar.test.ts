import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { eveningShelf, setFlight } from "../fixtures/evening.ts";
import { openPantry } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`the calendar (${database})`, () => {
    test("a resting batch stands on the day its rest ends, by the clock of the zone asked for", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const bottle = await pantry.bottle(rye);
      const recipe = await pantry.recipe("Lamplighter", [[1, rye]]);
      const batch = await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "November, first",
          recipeId: recipe.id,
          restDays: 14,
          vessel: { kind: "new", label: "Flask", capacityMl: 700 },
          pours: [{ from: { kind: "vessel", vesselId: bottle.id }, amount: { kind: "volume", ml: 300 } }],
        },
      });
      const days = await Promise.all(
        ["UTC", "Pacific/Kiritimati"].map(async (zone) => {
          const { text, events } = await house.client("getCalendar", { at: pantry.at, query: { zone } });
          expect(events).toBe(1);
          const [event] = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
          const read = new ICAL.Event(event);
          expect(read.summary).toBe("November, first has rested its 14 days");
          expect(read.startDate.isDate).toBe(true);
          return read.startDate.toString();
        }),
      );
      const due = Date.parse(batch.restDueAt ?? "");
      // Kiritimati's clock is 14 hours ahead all year.
      expect(days).toEqual(
        [0, 14].map((hours) => new Date(due + hours * 3_600_000).toISOString().slice(0, 10)),
      );
      const watered = await house.client("editBatch", {
        at: { ...pantry.at, batch: batch.id },
        body: {
          version: batch.version,
          reduction: { waterTo: { basis: "abv20", value: 44 }, steps: 3, everyDays: 2 },
        },
      });
      const { text } = await house.client("getCalendar", { at: pantry.at, query: { zone: "UTC" } });
      const steps = eventsIn(text).filter(({ summary }) => summary.startsWith("The next step of water"));
      expect(steps.map(({ startDate }) => startDate.toString()).toSorted()).toEqual(
        watered.reduction?.left.map(({ dueAt }) => dueAt.slice(0, 10)),
      );
      expect(new Set(steps.map(({ uid }) => uid)).size).toBe(3);
      await house.client("editBatch", {
        at: { ...pantry.at, batch: batch.id },
        body: { version: watered.version, finished: true },
      });
      expect((await house.client("getCalendar", { at: pantry.at, query: {} })).events).toBe(0);
    });

    test("a zone nobody knows is refused", async () => {
      await using house = await temporaryHouse(database);
      const { at } = await openPantry(house.client);
      const refused = await refusalOf(
        house.client("getCalendar", { at, query: { zone: "Europe/Saltreach" } }),
      );
      expect(refused.issues[0]?.path).toEqual(["zone"]);
    });
    test("C1 the file has what is due of a rest, by the household's names", async () => {
      await using house = await temporaryHouse(database, { now: "2026-11-01T20:00:00.000Z" });
      const { at } = await resting(house);
      const { text } = await house.client("getCalendar", { at, query: {} });
      const read = eventsIn(text);
      expect(read.map(({ summary }) => summary)).toEqual(
        expect.arrayContaining([
          expect.stringMatching(/^Taste November, first: day \d+ on oak$/),
          "Likely ready from here: November, first (80 %)",
          "Before-and-after flight: November, first",
        ]),
      );
      expect(read.find(({ summary }) => summary.startsWith("Before"))?.startDate.toString()).toBe(
        "2026-12-24",
      );
      expect(new Set(read.map(({ uid }) => uid)).size).toBe(read.length);
    });

    test("C1, O7 with one of two pieces out the days stand; with all out none of them does, nor behind a link", async () => {
      await using house = await temporaryHouse(database, { now: "2026-11-01T20:00:00.000Z" });
      const { at, rest } = await resting(house);
      const told = await house.client("putOakIn", { at: { ...at, rest: rest.id }, body: { areaCm2: 30 } });
      const link = await house.client("addCalendarLink", { at, body: { label: "phone" } });
      const days = async () => {
        const { text } = await house.client("getCalendar", { at, query: {} });
        const feed = await house.client("getFeed", { query: { link: link.path.split("=")[1] ?? "" } });
        return [text, feed].map((of) =>
          eventsIn(of)
            .map(({ uid }) => uid)
            .filter((uid) => /^(check|ready|leads)/.test(uid)),
        );
      };
      const out = async (nth: number, change: { readonly at?: null } = {}) => {
        const piece = (await house.client("listRests", { at: { ...at, batch: rest.batchId } })).items[0]?.oak[
          nth
        ];
        return house.client("takeOakOut", {
          at: { ...at, rest: rest.id, piece: piece?.id ?? "" },
          body: { version: piece?.version ?? 0, ...change },
        });
      };
      expect(told.oak.length).toBe(2);
      await out(0);
      for (const uids of await days()) expect(uids.length).toBeGreaterThan(1);
      await out(1);
      expect(await days()).toEqual([[], []]);
      await out(1, { at: null });
      for (const uids of await days()) expect(uids.length).toBeGreaterThan(1);
    });

    test("C2 a feed gives dates and neutral words alone, whatever is called what", async () => {
      await using house = await temporaryHouse(database, { now: "2026-11-01T20:00:00.000Z" });
      const { at } = await resting(house);
      const link = await house.client("addCalendarLink", {
        at,
        body: { label: "my phone", zone: "Europe/Paris" },
      });
      const answer = await house.fetch(new Request(`http://house.test${link.path}`));
      expect(answer.headers.get("content-type")).toBe("text/calendar; charset=utf-8");
      const text = await answer.text();
      const from = { from: "network", address: "192.0.2.7", secure: false } as const;
      const elsewhere = await house.fetch(new Request(`http://house.test${link.path}`), from);
      expect(await elsewhere.text()).toBe(text);
      expect(text).not.toMatch(/November, first|Harbour|Saltreach|Lamplighter|Flask|phone|toasted|vial/i);
      const summaries = eventsIn(text).map(({ summary }) => summary);
      expect(summaries).toContain("The batch of 1 November 2026 has rested its 14 days");
      expect(summaries).toContain("Before-and-after flight");
      expect(summaries.length).toBe((await house.client("getCalendar", { at, query: {} })).events);
    });

    test("C3 a link is told once and kept as a keyed hash; revoked, or guessed, it opens nothing", async () => {
      await using house = await temporaryHouse(database, { now: "2026-11-01T20:00:00.000Z" });
      const { at } = await resting(house);
      const links = await Promise.all(
        ["phone", "wall"].map((label) => house.client("addCalendarLink", { at, body: { label } })),
      );
      const secrets = links.map(({ path }) => path.split("=")[1] ?? "");
      expect(new Set(secrets).size).toBe(2);
      for (const secret of secrets) expect(secret).toMatch(/^[0-9a-f]{64}$/);
      const listed = JSON.stringify(await house.client("listCalendarLinks", { at }));
      const file = JSON.stringify(await house.client("exportHousehold", { at }));
      for (const secret of secrets) expect(listed + file).not.toContain(secret);
      const [first] = links;
      await house.client("revokeCalendarLink", { at: { ...at, link: first?.id ?? "" } });
      const feed = (link: string) => refusalOf(house.client("getFeed", { query: { link } }));
      const revoked = await feed(secrets[0] ?? "");
      const guessed = await feed("0".repeat(64));
      expect(revoked).toEqual(guessed);
      expect([revoked.status, revoked.codes]).toEqual([404, ["calendar_link_unknown"]]);
      expect(await house.client("getFeed", { query: { link: secrets[1] ?? "" } })).toMatch(
        /^BEGIN:VCALENDAR/,
      );
    });

    test("C4 no calendar tells anything of a flight whose key is sealed", async () => {
      await using house = await temporaryHouse(database);
      const texts = [];
      for (const glasses of [
        [0, 1, 2],
        [2, 1, 0],
      ]) {
        const evening = await eveningShelf(house.client, { whiskeys: 3, tasters: 1 });
        await setFlight(evening, glasses);
        const at = { household: evening.household };
        const { path } = await house.client("addCalendarLink", { at, body: { label: "phone" } });
        texts.push(await (await house.fetch(new Request(`http://house.test${path}`))).text());
      }
      expect(texts[0]).toBe(texts[1]);
    });
  });
});

/** A batch on oak, tasted once, with a flight planned. */
async function resting(house: TemporaryHouse) {
  const pantry = await openPantry(house.client);
  const rye = await pantry.whiskey("Harbour Rye", 50);
  const bottle = await pantry.bottle(rye);
  const recipe = await pantry.recipe("Lamplighter", [[1, rye]]);
  const { at } = pantry;
  const batch = await house.client("addBatch", {
    at,
    body: {
      name: "November, first",
      recipeId: recipe.id,
      restDays: 14,
      vessel: { kind: "new", label: "Flask", capacityMl: 700 },
      pours: [{ from: { kind: "vessel", vesselId: bottle.id }, amount: { kind: "volume", ml: 600 } }],
    },
  });
  const rest = await house.client("beginRest", {
    at: { ...at, batch: batch.id },
    body: {
      kind: "oak",
      pull: { attribute: "wood.toasted", level: 6 },
      sample: { label: "vial of before", capacityMl: 30, ml: 30 },
      flightOn: "2026-12-24",
    },
  });
  await house.client("putOakIn", { at: { ...at, rest: rest.id }, body: { areaCm2: 66 } });
  house.clock.advance({ days: 4 });
  await house.client("addCheck", {
    at: { ...at, rest: rest.id },
    body: { strengths: [{ section: "whole", attribute: "wood.toasted", strength: 3 }] },
  });
  return { at, batch, rest };
}

const eventsIn = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((event) => new ICAL.Event(event));
