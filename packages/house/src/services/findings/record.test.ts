import { eachDatabase, sha256, temporaryHouse } from "@partsproof/testkit";
import { hex, keyBytes, type PublishedRecord, readRecord, verifyRecord } from "@partsproof/core/sealing";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const key = (n: number): string => `device-key-${String(n).padStart(16, "0")}`;

eachDatabase((database) => {
  describe(`the promise of a key (${database})`, () => {
    test("P1 to P4 what phones stored before the reveal fits what is published after it, and a change is found", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      const { flight, hostToken, pourerToken } = await setFlight(shelf, [0, 1, 2], { distractors: [1] });
      const at = { household: shelf.household, flight: flight.id };
      const commitment = flight.commitment ?? "";
      expect(commitment).toMatch(/^[0-9a-f]{64}$/);
      expect(await house.client("getRecord", { at })).toEqual({
        flightId: flight.id,
        commitment,
        closing: null,
        record: null,
      });
      const [one, two] = await takeSheets(shelf, flight.id);
      if (!one || !two) throw new Error("two sheets are needed");
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      const sheetAt = { ...at, sheet: one.sheet.id };
      const [code = ""] = one.sheet.glasses.map((glass) => glass.code);
      const receipts = [];
      for (const [i, nameId] of shelf.nameIds.entries()) {
        house.clock.advance({ ms: 1500 });
        const { entry } = await house.client("addEntry", {
          at: sheetAt,
          token: one.token,
          body: { key: key(i), after: i, guesses: [{ code, nameId }] },
        });
        receipts.push({ sheet: one.sheet.id, entry: entry.number, hash: entry.hash ?? "" });
      }
      await lock(shelf, one);
      expect((await house.client("getFlight", { at })).closing).toBeNull();
      expect((await refusalOf(house.client("closeFlight", { at }))).status).toBe(401);
      const closed = await house.client("closeFlight", { at, token: hostToken });
      expect(closed).toMatchObject({ state: "tasting", closing: expect.stringMatching(/^[0-9a-f]{64}$/) });
      expect(closed.sheets.map(({ state }) => state)).toEqual(["locked", "closed"]);
      const before = await house.client("getRecord", { at });
      expect(before.record).toBeNull();
      // Closed, so that nobody's token is needed any more.
      await house.client("revealFlight", { at, body: {} });

      const { record } = await house.client("getRecord", { at });
      const read = readRecord(record);
      if (!read.ok) throw new Error(JSON.stringify(read));
      const witness = { commitment, closing: closed.closing ?? "", receipts };
      const { findings, unchecked, key: published } = verifyRecord(read.record, witness, sha256);
      expect([findings, unchecked]).toEqual([[], []]);
      const finding = await house.client("getFinding", { at });
      const told = finding.glasses.flatMap((glass) =>
        glass.codes.map((tasted) => `${tasted.code} ${glass.nameId}`),
      );
      const promised = published?.codes.map(
        ({ code: of, glass }) => `${of} ${published.glasses.find((g) => g.glass === glass)?.name}`,
      );
      expect(promised?.toSorted()).toEqual(told.toSorted());

      const forge = (change: (copy: PublishedRecord) => unknown) => {
        const copy = JSON.parse(JSON.stringify(read.record)) as PublishedRecord;
        change(copy);
        return verifyRecord(copy, witness, sha256).findings.map((found) => found.code);
      };
      const sheet = read.record.sheets.findIndex((s) => s.sheet === one.sheet.id);
      const [first = "", last = ""] = shelf.nameIds;
      expect(
        forge((copy) =>
          Object.assign(copy.sheets[sheet]?.entries[0] ?? {}, {
            body: (copy.sheets[sheet]?.entries[0]?.body ?? "").replace(first, last),
          }),
        ),
      ).toContain("changed_entry");
      expect(forge((copy) => Object.assign(copy, { nonce: "0".repeat(64) }))).toContain("changed_key");
    });

    test("P2, E6, E7 what an entry may say now leaves the bytes of those from before, and is under the digest itself", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { flight, pourerToken } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id };
      const [taken] = await takeSheets(shelf, flight.id);
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      const { sheet, token } = taken ?? { sheet: { id: "", glasses: [] }, token: "" };
      const code = sheet.glasses[0]?.code ?? "";
      const pass = { nose: "", palate: "", finish: "" };
      const notes = [{ code, first: { ...pass, nose: "sea" }, second: pass, score: 80 }];
      const smoke = { code, pass: "first", section: "nose", attribute: "smoke.smoke", strength: 6 } as const;
      for (const [i, written] of [
        { notes },
        { strengths: [smoke] },
        { notes, ranking: null, typedBy: "Nell" },
      ].entries()) {
        await house.client("addEntry", {
          at: { ...at, sheet: sheet.id },
          token,
          body: { key: key(i), after: i, ...written },
        });
      }
      if (taken) await lock(shelf, taken);
      await house.client("revealFlight", { at, body: {} });
      const read = readRecord((await house.client("getRecord", { at })).record);
      if (!read.ok) throw new Error(JSON.stringify(read));
      const before = `"notes":[{"code":"${code}","first":{"nose":"sea","palate":"","finish":""},"second":{"nose":"","palate":"","finish":""},"score":80}]`;
      expect(read.record.sheets[0]?.entries.map(({ kind, body }) => [kind, body])).toEqual([
        // As it was written when notes, guesses, rankings and answers were all there was.
        ["note", `{${before}}`],
        [
          "note",
          `{"strengths":[{"code":"${code}","pass":"first","section":"nose","attribute":"smoke.smoke","strength":6}]}`,
        ],
        ["rank", `{${before},"ranking":null,"typedBy":"Nell"}`],
        ["lock", "{}"],
      ]);
      expect(verifyRecord(read.record, {}, sha256).findings).toEqual([]);
      for (const [entry, from, to] of [
        [1, '"strength":6', '"strength":7'],
        [2, "Nell", "Bell"],
      ] as const) {
        const copy = JSON.parse(JSON.stringify(read.record)) as PublishedRecord;
        const one = copy.sheets[0]?.entries[entry];
        Object.assign(one ?? {}, { body: one?.body.replace(from, to) });
        expect(verifyRecord(copy, {}, sha256).findings.map((found) => [found.code, found.entry])).toEqual([
          ["changed_entry", entry + 1],
        ]);
      }
      const [found] = (await house.client("getFinding", { at })).sheets;
      expect(found?.typedBy).toBe("Nell");
      expect(found?.glasses.find((glass) => glass.code === code)?.strengths).toEqual([
        { pass: "first", section: "nose", attribute: "smoke.smoke", strength: 6 },
      ]);
    });

    test.each([
      ["triangle", {}],
      ["duo_trio", {}],
      ["paired", { asked: "sweeter" }],
    ] as const)(
      "Q11, P1 to P4 the record of %s verifies with its sets, and a changed set or answer is found",
      async (method, more) => {
        await using house = await temporaryHouse(database);
        const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
        const expected = method === "paired" ? { expectedVesselId: shelf.vesselIds[0] ?? "" } : {};
        const question = { question: "tell_apart", method, sets: 2, ...more, ...expected } as const;
        const { flight, pourerToken } = await setFlight(shelf, [0, 1], question);
        const at = { household: shelf.household, flight: flight.id };
        const list = await house.client("getPourList", { at, token: pourerToken ?? "" });
        await house.client("markPoured", { at, token: pourerToken ?? "" });
        const receipts = [];
        for (const taken of await takeSheets(shelf, flight.id)) {
          for (const { set, glasses } of taken.sheet.sets) {
            const picked = [glasses[0]?.code ?? ""];
            const { entry } = await house.client("addEntry", {
              at: { ...at, sheet: taken.sheet.id },
              token: taken.token,
              body: { key: key(set), after: set - 1, answers: [{ set, picked }] },
            });
            receipts.push({ sheet: taken.sheet.id, entry: entry.number, hash: entry.hash ?? "" });
          }
          await lock(shelf, taken);
        }
        const { closing } = await house.client("getFlight", { at });
        await house.client("revealFlight", { at, body: {} });
        const read = readRecord((await house.client("getRecord", { at })).record);
        if (!read.ok) throw new Error(JSON.stringify(read));
        const witness = { commitment: flight.commitment ?? "", closing: closing ?? "", receipts };
        const { findings, unchecked, key: published } = verifyRecord(read.record, witness, sha256);
        expect([findings, unchecked]).toEqual([[], []]);
        const vesselOf = (glass: string) => published?.glasses.find((one) => one.glass === glass)?.vessel;
        const promised = published?.codes.map(({ set, turn, code, glass }) => [
          set,
          turn,
          code,
          vesselOf(glass),
        ]);
        const poured = list.tasters.flatMap(({ glasses }) =>
          [...Map.groupBy(glasses, ({ set }) => set)].flatMap(([set, own]) =>
            own.map(({ code, vesselId }, i) => [set, i + 1, code, vesselId]),
          ),
        );
        expect(promised?.map(String).toSorted()).toEqual(poured.map(String).toSorted());
        expect(published?.expected === undefined ? null : vesselOf(published.expected)).toBe(
          method === "paired" ? shelf.vesselIds[0] : null,
        );

        const forge = (change: (copy: PublishedRecord) => unknown) => {
          const copy = JSON.parse(JSON.stringify(read.record)) as PublishedRecord;
          change(copy);
          return verifyRecord(copy, witness, sha256).findings.map((found) => found.code);
        };
        if (!published) throw new Error("a key is needed");
        const [one, ...others] = published.codes;
        if (!one) throw new Error("a code is needed");
        const swapped = { ...one, glass: one.glass === "0" ? "1" : "0" };
        expect(
          forge((copy) =>
            Object.assign(copy, { key: hex(keyBytes({ ...published, codes: [swapped, ...others] })) }),
          ),
        ).toContain("changed_key");
        const { body = "" } = read.record.sheets[0]?.entries[0] ?? {};
        const answer = JSON.parse(body) as { answers: { picked: string[] }[] };
        Object.assign(answer.answers[0] ?? {}, { picked: ["999"] });
        expect(
          forge((copy) => Object.assign(copy.sheets[0]?.entries[0] ?? {}, { body: JSON.stringify(answer) })),
        ).toContain("changed_entry");
      },
    );

    test("P3 the closing stands as soon as the last sheet is locked, and covers every entry", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
      const { flight, pourerToken } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id };
      const taken = await takeSheets(shelf, flight.id);
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      for (const sheet of taken) await lock(shelf, sheet);
      const { closing } = await house.client("getFlight", { at });
      expect(closing).not.toBeNull();
      await house.client("revealFlight", { at, body: {} });
      const { record } = await house.client("getRecord", { at });
      expect(record?.closing.hash).toBe(closing);
      expect(record?.closing.heads.map(({ entries }) => entries)).toEqual([1, 1]);
    });

    test("P2 a clock set back makes no entry older than the one before it", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { flight, hostToken, pourerToken } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id };
      const [one] = await takeSheets(shelf, flight.id);
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      const write = (n: number) =>
        house.client("addEntry", {
          at: { ...at, sheet: one?.sheet.id ?? "" },
          token: one?.token ?? "",
          body: { key: key(n), after: n, ranking: null },
        });
      const first = await write(0);
      house.clock.advance({ hours: -1 });
      expect((await write(1)).entry.at).toBe(first.entry.at);
      await house.client("revealFlight", { at, token: hostToken, body: { closeOpenSheets: true } });
      const read = readRecord((await house.client("getRecord", { at })).record);
      if (!read.ok) throw new Error(JSON.stringify(read));
      expect(verifyRecord(read.record, {}, sha256).findings).toEqual([]);
    });

    test("P5 alone nothing is promised, and a copy of a household carries no promise", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const alone = await setFlight(shelf, [0, 1], { pouring: "alone", pourer: null });
      expect(alone.flight.commitment).toBeNull();
      const { flight, hostToken, pourerToken } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id };
      const [one] = await takeSheets(shelf, flight.id);
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      await house.client("addEntry", {
        at: { ...at, sheet: one?.sheet.id ?? "" },
        token: one?.token ?? "",
        body: { key: key(0), after: 0, ranking: null },
      });
      await house.client("revealFlight", { at, token: hostToken, body: { closeOpenSheets: true } });
      const file = await house.client("exportHousehold", { at: { household: shelf.household } });
      expect(file.tables["entry"]).toHaveLength(1);
      const { id } = await house.client("restoreHousehold", { body: file });
      const { items } = await house.client("listFlights", { at: { household: id } });
      const copy = items.find(({ state }) => state === "revealed");
      const there = { household: id, flight: copy?.id ?? "" };
      expect(await house.client("getRecord", { at: there })).toMatchObject({
        commitment: null,
        record: null,
      });
      const entries = await house.client("listEntries", {
        at: { ...there, sheet: copy?.sheets[0]?.sheetId ?? "" },
      });
      expect(entries.items).toMatchObject([{ number: 1, ranking: null, hash: null }]);
    });
  });
});
