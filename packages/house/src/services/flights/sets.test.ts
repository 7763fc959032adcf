import { eachDatabase, sha256, temporaryHouse } from "@partsproof/testkit";
import { readRecord, verifyRecord } from "@partsproof/core/sealing";
import { DISCRIMINATION } from "@partsproof/core/sensory";
import { describe, expect, test } from "vitest";
import type { Client, PourList } from "../../protocol/index.ts";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { answerOf, everyGet } from "../fixtures/every-get.ts";
import { device } from "../fixtures/network.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const key = (n: number): string => `a-key-of-this-sheet-${String(n).padStart(6, "0")}`;
type Method = keyof typeof DISCRIMINATION;

/** The orders poured, in A for the first vessel and B for the other, one a taster and set. */
function orders(list: PourList, first: string): string[] {
  return list.tasters.flatMap(({ glasses }) =>
    [...Map.groupBy(glasses, ({ set }) => set).values()].map((set) =>
      set.map(({ vesselId }) => (vesselId === first ? "A" : "B")).join(""),
    ),
  );
}

async function poured(client: Client, at: { household: string; flight: string }, token: string | null) {
  const list = await client("getPourList", { at, token: token ?? "" });
  await client("markPoured", { at, token: token ?? "" });
  return list;
}

eachDatabase((database) => {
  describe(`sets (${database})`, () => {
    const evening = async (method: Method, sets: number, tasters: number, more: object = {}) => {
      const house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters });
      const asked = method === "paired" ? { asked: "sweeter" } : {};
      const question = { question: "tell_apart", method, sets, ...asked, ...more } as const;
      const made = await setFlight(shelf, [0, 1], question);
      const at = { household: shelf.household, flight: made.flight.id };
      return { house, client: house.client, shelf, made, at, [Symbol.asyncDispose]: () => house.close() };
    };

    test.each([
      ["triangle", 3],
      ["duo_trio", 2],
      ["paired", 2],
      ["tetrad", 4],
    ] as const)(
      "Q2 %s: every order equally often over all tasters and sets, codes fresh",
      async (method, coded) => {
        const rounds = DISCRIMINATION[method].orders.length;
        // Two sets for as many tasters as there are orders: each order is used twice.
        await using it = await evening(method, 2, rounds);
        const list = await poured(it.client, it.at, it.made.pourerToken);
        const times = Map.groupBy(orders(list, it.shelf.vesselIds[0] ?? ""), (order) => order);
        expect([...times.keys()].toSorted()).toEqual(DISCRIMINATION[method].orders.toSorted());
        for (const [order, used] of times) expect(used, order).toHaveLength(2);
        const codes = list.tasters.flatMap(({ glasses }) => glasses.map(({ code }) => code));
        const drawn = codes.filter((code) => code !== "R");
        expect(drawn).toHaveLength(2 * rounds * coded);
        expect(new Set(drawn).size).toBe(drawn.length);
        expect(codes.length - drawn.length).toBe(method === "duo_trio" ? 2 * rounds : 0);
        expect(it.made.flight.design).toMatchObject({ method, setsEach: 2, glassesEach: 2 * coded });
        expect(it.made.flight.design.said).toEqual([
          `Each of the ${rounds} orders of a set is used twice.`,
          "Both are poured equally often.",
          "Which orders a taster gets is chance.",
        ]);
        expect(it.made.flight.glassCount).toBe(list.tasters[0]?.glasses.length);
      },
    );

    test("Q7 what the design leaves unbalanced is said when it is set", async () => {
      await using it = await evening("triangle", 1, 7);
      expect(it.made.flight.design.said).toEqual([
        "Some of the 6 orders of a set are used twice and some once; 5 more sets would even that out.",
        "One of the two is poured in one glass more than the other.",
        "Which orders a taster gets is chance.",
      ]);
    });

    test("Q8, Q12 the taster is told the task and no name; the pourer's list has the sets, R at 0", async () => {
      await using it = await evening("duo_trio", 2, 1);
      const [taken] = await takeSheets(it.shelf, it.at.flight);
      expect(taken?.sheet).toMatchObject({
        question: "tell_apart",
        task: "Which of the two is the same as R?",
        asks: { guesses: false, ranking: null, answers: "picked" },
        namesOnOffer: [],
        target: null,
        reference: false,
      });
      expect(taken?.sheet.glasses.map(({ position }) => position)).toEqual([1, 2, 3, 4]);
      expect(taken?.sheet.sets).toMatchObject([
        { set: 1, reference: true, picked: null, glasses: [{ position: 1 }, { position: 2 }] },
        { set: 2, reference: true, picked: null, glasses: [{ position: 3 }, { position: 4 }] },
      ]);
      for (const id of it.shelf.whiskeyIds) expect(JSON.stringify(taken)).not.toContain(id);
      expect(JSON.stringify(taken)).not.toContain("Tide");
      const [tasted] = (await poured(it.client, it.at, it.made.pourerToken)).tasters;
      expect(tasted?.glasses.map(({ set, position, code }) => [set, position, code === "R"])).toEqual([
        [1, 0, true],
        [1, 1, false],
        [1, 2, false],
        [2, 0, true],
        [2, 3, false],
        [2, 4, false],
      ]);
    });

    test("Q9, E1, E2 answers are entries: added, kept as history, sent again once, locked with the sheet", async () => {
      await using it = await evening("triangle", 2, 1);
      const [taken] = await takeSheets(it.shelf, it.at.flight);
      if (!taken) throw new Error("a sheet required");
      await poured(it.client, it.at, it.made.pourerToken);
      const { client } = it;
      const { token, sheet } = taken;
      const at = { ...it.at, sheet: sheet.id };
      const [first, second] = sheet.sets.map(({ glasses }) => glasses.map(({ code }) => code));
      const write = (n: number, after: number, answers: { set: number; picked: string[] | null }[]) =>
        client("addEntry", { at, token, body: { key: key(n), after, answers } });
      await write(1, 0, [{ set: 2, picked: [second?.[0] ?? ""] }]);
      const kept = await write(2, 1, [{ set: 1, picked: [first?.[1] ?? ""] }]);
      expect(kept.sheet.sets.map(({ picked }) => picked)).toEqual([[first?.[1]], [second?.[0]]]);
      expect(await write(2, 1, [{ set: 1, picked: [first?.[1] ?? ""] }])).toEqual(kept);
      const reused = await refusalOf(write(2, 1, [{ set: 1, picked: [first?.[2] ?? ""] }]));
      expect(reused.codes).toEqual(["key_reused"]);
      expect((await refusalOf(write(3, 1, [{ set: 1, picked: null }]))).codes).toEqual(["entry_conflict"]);
      const back = await write(4, 2, [{ set: 1, picked: null }]);
      expect(back.sheet.sets.map(({ picked }) => picked)).toEqual([null, [second?.[0]]]);
      const { items } = await client("listEntries", { at, token });
      expect(items.map(({ answers }) => answers)).toEqual([
        [{ set: 2, picked: [second?.[0]], ranking: null }],
        [{ set: 1, picked: [first?.[1]], ranking: null }],
        [{ set: 1, picked: null, ranking: null }],
      ]);
      await lock(it.shelf, taken);
      const late = await refusalOf(write(5, 4, [{ set: 1, picked: [first?.[0] ?? ""] }]));
      expect(late).toMatchObject({ status: 409, codes: ["sheet_locked"] });
    });

    test("Q9 what is not asked, a set that is not there and picks that say nothing are refused at their place", async () => {
      await using it = await evening("tetrad", 2, 1);
      const [taken] = await takeSheets(it.shelf, it.at.flight);
      if (!taken) throw new Error("a sheet required");
      await poured(it.client, it.at, it.made.pourerToken);
      const { token, sheet } = taken;
      const at = { ...it.at, sheet: sheet.id };
      const [[a = "", b = "", c = ""] = [], [d = ""] = []] = sheet.sets.map(({ glasses }) =>
        glasses.map(({ code }) => code),
      );
      const edit = (body: object) =>
        refusalOf(it.client("editSheet", { at, token, body: { version: sheet.version, ...body } }));
      const no = async (body: object, code: string, path: (string | number)[]) =>
        expect(await edit(body)).toMatchObject({ status: 422, issues: [{ code, path }] });
      await no({ guesses: [{ code: a, nameId: it.shelf.nameIds[0] }] }, "guess_not_asked", ["guesses"]);
      await no({ ranking: [[a]] }, "ranking_not_asked", ["ranking"]);
      await no({ answers: [{ set: 1, ranking: [[a]] }] }, "answer_not_asked", ["answers", 0, "ranking"]);
      await no({ answers: [{ set: 3, picked: [a, b] }] }, "unknown_set", ["answers", 0, "set"]);
      await no({ answers: [{ set: 1, picked: [a, d] }] }, "unknown_code", ["answers", 0, "picked", 1]);
      await no({ answers: [{ set: 1, picked: [a] }] }, "picks_wrong", ["answers", 0, "picked"]);
      await no({ answers: [{ set: 1, picked: [a, a] }] }, "picks_wrong", ["answers", 0, "picked"]);
      const twice = [
        { set: 1, picked: [a, b] },
        { set: 1, picked: [a, c] },
      ];
      await no({ answers: twice }, "set_answered_twice", ["answers", 1, "set"]);
      expect((await it.client("getSheet", { at, token })).sets.map(({ picked }) => picked)).toEqual([
        null,
        null,
      ]);
      expect((await it.client("listEntries", { at, token })).items).toEqual([]);
    });

    test("Q9 a guess at like_best and an answer at which_is_which are refused", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      for (const [question, body, code] of [
        ["like_best", "guesses", "guess_not_asked"],
        ["which_is_which", "answers", "answer_not_asked"],
      ] as const) {
        const { flight, pourerToken } = await setFlight(shelf, [0, 1], { question });
        const at = { household: shelf.household, flight: flight.id };
        await house.client("markPoured", { at, token: pourerToken ?? "" });
        const [taken] = await takeSheets(shelf, flight.id);
        if (!taken) throw new Error("a sheet required");
        const glass = taken.sheet.glasses[0]?.code ?? "";
        const written =
          body === "guesses"
            ? { guesses: [{ code: glass, nameId: shelf.nameIds[0] ?? "" }] }
            : { answers: [{ set: 1, picked: [glass] }] };
        const { token, sheet } = taken;
        const sent = house.client("editSheet", {
          at: { ...at, sheet: sheet.id },
          token,
          body: { version: sheet.version, ...written },
        });
        const no = await refusalOf(sent);
        expect(no).toMatchObject({ status: 422, codes: [code] });
        expect(no.issues[0]?.message).toMatch(new RegExp(`^a sheet of ${question} requires no .*, got \\d$`));
      }
    });

    test("Q1 a flight set before there were questions is tasted, revealed and verified as what it was", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 1 });
      const { flight, pourerToken } = await setFlight(shelf, [0, 1, 1], { distractors: [2] });
      const at = { household: shelf.household, flight: flight.id };
      // As migration 0004 leaves it.
      await house.store.transaction(async (records) => {
        const row = await records.find("flight", at.household, at.flight);
        if (!row) throw new Error("a flight is needed");
        await records.replace("flight", { ...row, design: null, version: row.version + 1 });
      });
      const old = await house.client("getFlight", { at });
      expect(old).toMatchObject({
        question: "which_is_which",
        glassCount: 3,
        design: { glassesEach: 3, said: [] },
      });
      await poured(house.client, at, pourerToken);
      const [taken] = await takeSheets(shelf, flight.id);
      if (!taken) throw new Error("a sheet is needed");
      const { token, sheet } = taken;
      const codes = sheet.glasses.map(({ code }) => code);
      const body = {
        version: sheet.version,
        guesses: [{ code: codes[0] ?? "", nameId: shelf.nameIds[2] ?? "" }],
        ranking: codes.map((code) => [code]),
      };
      await house.client("editSheet", { at: { ...at, sheet: sheet.id }, token, body });
      await lock(shelf, taken);
      const { closing } = await house.client("getFlight", { at });
      const finding = await house.client("revealFlight", { at, body: {} });
      expect(finding).toMatchObject({
        sets: null,
        closeness: null,
        agreement: null,
        pooledGuesses: { right: 0 },
      });
      expect(finding.glasses.map(({ pour }) => pour).toSorted()).toEqual(["", "first pour", "second pour"]);
      const read = readRecord((await house.client("getRecord", { at })).record);
      if (!read.ok) throw new Error(JSON.stringify(read));
      const witness = { commitment: flight.commitment ?? "", closing: closing ?? "" };
      const { findings, key: published } = verifyRecord(read.record, witness, sha256);
      expect(findings).toEqual([]);
      expect(published?.codes.some(({ set }) => set !== undefined)).toBe(false);
    });

    test("Q10 kept back at most, posted as poured: five triangles are 7 glasses of one and 8 of the other", async () => {
      await using it = await evening("triangle", 5, 1, { pourMl: 10 });
      const { household } = it.at;
      const [a = "", b = "", c = ""] = it.shelf.vesselIds;
      const keptMl = async (vessel: string) =>
        (await it.client("getVessel", { at: { household, vessel } })).keptMl;
      expect([await keptMl(a), await keptMl(b), await keptMl(c)]).toEqual([80, 80, 0]);
      const list = await poured(it.client, it.at, it.made.pourerToken);
      expect(list.totals.map(({ ml }) => ml).toSorted((a, b) => a - b)).toEqual([70, 80]);
      await it.client("revealFlight", {
        at: it.at,
        token: it.made.hostToken,
        body: { closeOpenSheets: true },
      });
      const { items } = await it.client("listTransfers", { at: { household } });
      const own = items.filter(({ flightId }) => flightId === it.at.flight);
      const posted = own.map(({ from, amount }) => [from.kind === "vessel" && from.vesselId, amount]);
      expect(new Map(posted as [string, unknown][])).toEqual(
        new Map(list.totals.map(({ vesselId, ml }) => [vesselId, { kind: "volume", ml }])),
      );
      expect([await keptMl(a), await keptMl(b)]).toEqual([0, 0]);
    });

    test("F12 alcohol is at most that of the strongest composition, and at the reveal that of the fullest sheet", async () => {
      await using it = await evening("triangle", 2, 2);
      // 15 mL at 40 and 43 % vol, ethanol 0.78924 g/mL (OIML R 22): two of 43 and one of 40, twice.
      const most = 2 * 15 * 0.78924 * (2 * 0.43 + 0.4);
      expect(it.made.flight.alcoholAtMost.grams).toBeCloseTo(most, 3);
      const list = await poured(it.client, it.at, it.made.pourerToken);
      const [weak] = it.shelf.vesselIds;
      const grams = list.tasters.map(({ glasses }) =>
        glasses.reduce((sum, { vesselId }) => sum + 15 * 0.78924 * (vesselId === weak ? 0.4 : 0.43), 0),
      );
      const body = { closeOpenSheets: true };
      const finding = await it.client("revealFlight", { at: it.at, token: it.made.hostToken, body });
      expect(finding.alcoholPerTaster.grams).toBeCloseTo(Math.max(...grams), 3);
    });

    test("Q8 a guest who tastes is told no name of two to tell apart by any answer, until the reveal", async () => {
      await using it = await evening("triangle", 1, 1, { seats: 1 });
      const { client: phone, door } = device(it.house);
      const { hostToken, pourerToken } = it.made;
      const made = await it.client("openJoining", { at: it.at, token: hostToken, body: { role: "taster" } });
      const body = {
        ticket: { kind: "link", link: made.link },
        key: key(1),
        name: "Guest",
        ofLegalAge: true,
      } as const;
      const { token, sheet } = await phone("join", { body });
      await it.client("markPoured", { at: it.at, token: pourerToken ?? "" });
      const ids = { household: [it.at.household], flight: [it.at.flight], sheet: [sheet?.id ?? ""] };
      for (const { path } of everyGet({ ...ids, whiskey: [], vessel: [] })) {
        const answer = await answerOf(door, path, token);
        expect(answer, path).not.toContain("Tide");
        for (const nameId of it.shelf.nameIds) expect(answer, path).not.toContain(nameId);
      }
      expect(await phone("getFlight", { at: it.at, token })).toMatchObject({
        namesOnOffer: [],
        targetNameId: null,
      });
      await it.client("revealFlight", { at: it.at, token: hostToken, body: { closeOpenSheets: true } });
      const after = await phone("getFlight", { at: it.at, token });
      expect(after.namesOnOffer.map(({ nameId }) => nameId).toSorted()).toEqual(
        it.shelf.nameIds.slice(0, 2).toSorted(),
      );
    });

    test("Q17 who holds the reveal back is said, an empty seat as one", async () => {
      await using it = await evening("triangle", 1, 2, { seats: 1 });
      expect(it.made.flight.waitingFor, "nobody waits while it is poured").toEqual([]);
      const sheets = it.made.flight.sheets;
      const [first] = sheets;
      const at = { ...it.at, sheet: first?.sheetId ?? "" };
      await it.client("takeSheet", { at, body: { ofLegalAge: true } });
      await poured(it.client, it.at, it.made.pourerToken);
      const flight = await it.client("getFlight", { at: it.at });
      expect(flight.waitingFor.map(({ taster, empty }) => [taster, empty])).toEqual([
        ["Taster 1", false],
        ["Taster 2", true],
        ["Seat 1", true],
      ]);
      const no = await refusalOf(it.client("revealFlight", { at: it.at, body: {} }));
      expect(no).toMatchObject({ codes: ["sheets_not_locked"], issues: [{ received: 3 }] });
      expect(no.issues[0]?.message).toContain(
        "got 3 not locked: Taster 1, Taster 2 (nobody sits there), Seat 1 (nobody sits there)",
      );
    });
  });
});
