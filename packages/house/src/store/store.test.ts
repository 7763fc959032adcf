import { borrowDatabase, eachDatabase, openDatabase, type TemporaryDatabase } from "@partsproof/testkit";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Records, Store, TableName, Tables } from "../services/index.ts";
import { id, oneOfEach, oneOfEachOfHouse, withNulls } from "./fixtures/rows.ts";
import { houseTableNames, tableNames } from "./tables.ts";

const pause = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

eachDatabase((database) => {
  describe(`store on ${database}`, () => {
    let place: TemporaryDatabase;
    let store: Store;

    beforeEach(async () => {
      place = await borrowDatabase(database);
      ({ store } = await openDatabase(place.place));
    });
    afterEach(async () => {
      await store.close();
      await place.remove();
    });

    const insertAll = (rows: Tables): Promise<void> =>
      store.transaction(async (records) => {
        for (const table of tableNames) await records.insert(table, rows[table]);
      });
    const find = <N extends TableName>(
      table: N,
      household: number,
      rowId: string,
    ): Promise<Tables[N] | null> =>
      store.transaction((records) => records.find(table, id("household", household), rowId));
    const addTasters = (household: number, count: number): Promise<void> =>
      store.transaction(async (records) => {
        const rows = oneOfEach(household);
        await records.insert("household", rows.household);
        for (let i = 1; i <= count; i++) {
          await records.insert("taster", {
            ...rows.taster,
            id: id("taster", household * 1000 + i),
            name: i % 2 ? "odd" : "even",
          });
        }
      });

    it("gives back every table's row as it was written", async () => {
      const rows = oneOfEach(1);
      await insertAll(rows);
      for (const table of tableNames) {
        expect(await find(table, 1, rows[table].id), table).toStrictEqual(rows[table]);
        const listed = await store.transaction((records) => records.list(table, id("household", 1)));
        expect(listed, table).toStrictEqual([rows[table]]);
      }
    });

    it("keeps rows of the house itself, apart from every household", async () => {
      const rows = oneOfEachOfHouse(1);
      for (const table of houseTableNames) {
        await store.transaction(async (records) => {
          await records.ofHouse.insert(table, rows[table]);
          await records.ofHouse.insert(table, oneOfEachOfHouse(2)[table]);
        });
        const listed = () => store.transaction((records) => records.ofHouse.list(table));
        expect(await listed(), table).toStrictEqual([rows[table], oneOfEachOfHouse(2)[table]]);
        const next = { ...rows[table], version: 2 };
        const replace = () => store.transaction((records) => records.ofHouse.replace(table, next));
        expect([await replace(), await replace()], table).toStrictEqual([true, false]);
        const remove = () => store.transaction((records) => records.ofHouse.remove(table, rows[table].id));
        expect([await remove(), await remove()], table).toStrictEqual([true, false]);
        expect(await listed(), table).toStrictEqual([oneOfEachOfHouse(2)[table]]);
      }
    });

    it("removes what the trail says of a household with the household", async () => {
      await insertAll(oneOfEach(1));
      await store.transaction(async (records) => {
        for (const n of [1, 2]) await records.ofHouse.insert("trail", oneOfEachOfHouse(n).trail);
        await records.removeHousehold(id("household", 1));
      });
      const left = await store.transaction((records) => records.ofHouse.list("trail"));
      expect(left.map(({ aboutHousehold }) => aboutHousehold)).toStrictEqual([id("household", 2)]);
    });

    it("gives back null where null was written", async () => {
      const full = oneOfEach(1);
      const rows = Object.fromEntries(
        tableNames.map((table) => [table, { ...full[table], ...withNulls[table] }]),
      ) as unknown as Tables;
      await insertAll(rows);
      for (const table of tableNames) {
        expect(await find(table, 1, rows[table].id), table).toStrictEqual(rows[table]);
      }
    });

    it("lists by birth, either way round, page after page", async () => {
      await addTasters(1, 7);
      const page = (after: string | undefined, newestFirst: boolean) =>
        store.transaction((records) =>
          records.list("taster", id("household", 1), {
            limit: 3,
            newestFirst,
            ...(after === undefined ? {} : { after }),
          }),
        );
      for (const newestFirst of [false, true]) {
        const seen: string[] = [];
        for (let after: string | undefined; seen.length < 7; after = seen.at(-1)) {
          const rows = await page(after, newestFirst);
          expect(rows.length).toBe(Math.min(3, 7 - seen.length));
          seen.push(...rows.map((row) => row.id));
        }
        expect(await page(seen.at(-1), newestFirst)).toStrictEqual([]);
        const born = Array.from({ length: 7 }, (_, i) => id("taster", 1001 + i));
        expect(seen).toStrictEqual(newestFirst ? born.toReversed() : born);
      }
    });

    it("filters by text, number, truth and null, all together", async () => {
      await insertAll(oneOfEach(1));
      await store.transaction(async (records) => {
        await records.insert("whiskey", {
          ...oneOfEach(1).whiskey,
          id: id("whiskey", 50),
          ...withNulls.whiskey,
        });
      });
      const household = id("household", 1);
      const [byNull, byNumber, byBoth, byJsonNull, byTruth, byUntruth] = await store.transaction(
        async (records) => [
          await records.list("whiskey", household, { where: { priceMinor: null } }),
          await records.list("whiskey", household, { where: { ageYears: 0.1 + 0.2, version: 1 } }),
          await records.list("whiskey", household, { where: { name: "Lamplighter's Rest", ageYears: null } }),
          await records.list("whiskey", household, { where: { grains: null } }),
          await records.list("household", household, { where: { demo: true } }),
          await records.households({ where: { demo: false } }),
        ],
      );
      expect(byNull?.map((row) => row.id)).toStrictEqual([id("whiskey", 50)]);
      expect(byNumber?.map((row) => row.id)).toStrictEqual([id("whiskey", 1)]);
      expect(byBoth?.map((row) => row.id)).toStrictEqual([id("whiskey", 50)]);
      expect(byJsonNull?.map((row) => row.id)).toStrictEqual([id("whiskey", 50)]);
      expect(byTruth).toHaveLength(1);
      expect(byUntruth).toHaveLength(0);
    });

    it("lists the rows of given ids and no others, of none none, and never another household's", async () => {
      await addTasters(1, 4);
      await addTasters(2, 1);
      const list = (ids: readonly string[], name?: string) =>
        store.transaction(async (records) => {
          const where = name === undefined ? {} : { where: { name } };
          const rows = await records.list("taster", id("household", 1), { ids, ...where });
          return rows.map((row) => row.id);
        });
      const of = (n: number) => id("taster", 1000 + n);
      expect(await list([of(3), of(1), of(3), id("taster", 2001), id("taster", 9)])).toStrictEqual([
        of(1),
        of(3),
      ]);
      expect(await list([of(1), of(2)], "even")).toStrictEqual([of(2)]);
      expect(await list([])).toStrictEqual([]);
    });

    it("refuses a filter without a value or of an unknown field instead of listing everything", async () => {
      await addTasters(1, 1);
      const listBy = (where: Record<string, unknown>) =>
        store.transaction((records) => records.list("taster", id("household", 1), { where }));
      await expect(listBy({ name: undefined })).rejects.toThrow(/requires a field and a value/);
      await expect(listBy({ nom: "odd" })).rejects.toThrow(/requires a field and a value/);
    });

    it("replaces only the version that was read", async () => {
      await addTasters(1, 1);
      const old = oneOfEach(1).taster;
      const row = { ...old, id: id("taster", 1001), version: 2, name: "second" };
      const replace = (next: Tables["taster"]) =>
        store.transaction((records) => records.replace("taster", next));
      expect(await replace(row)).toBe(true);
      expect(await replace({ ...row, name: "stale" })).toBe(false);
      expect(await replace({ ...row, version: 9, name: "from the future" })).toBe(false);
      expect(await replace({ ...row, id: id("taster", 999), name: "gone" })).toBe(false);
      expect(await find("taster", 1, row.id)).toStrictEqual(row);
    });

    it("removes a row once", async () => {
      await addTasters(1, 1);
      const remove = () =>
        store.transaction((records) => records.remove("taster", id("household", 1), id("taster", 1001)));
      expect(await remove()).toBe(true);
      expect(await remove()).toBe(false);
      expect(await find("taster", 1, id("taster", 1001))).toBeNull();
    });

    it("keeps nothing of a transaction that throws", async () => {
      await addTasters(1, 1);
      const attempt = store.transaction(async (records) => {
        await records.insert("taster", oneOfEach(1).taster);
        await records.replace("household", { ...oneOfEach(1).household, version: 2, name: "changed" });
        await records.remove("taster", id("household", 1), id("taster", 1001));
        await records.nextSeq(id("household", 1));
        throw new Error("no");
      });
      await expect(attempt).rejects.toThrow("no");
      expect(await find("taster", 1, oneOfEach(1).taster.id)).toBeNull();
      expect(await find("taster", 1, id("taster", 1001))).not.toBeNull();
      expect((await find("household", 1, id("household", 1)))?.version).toBe(1);
      expect(await store.transaction((records) => records.nextSeq(id("household", 1)))).toBe(1);
    });

    it("keeps nothing of a transaction in which a statement failed, though its failure was caught", async () => {
      await addTasters(1, 1);
      const attempt = store.transaction(async (records) => {
        await records.insert("taster", oneOfEach(1).taster);
        await records.insert("taster", oneOfEach(1).taster).catch(() => undefined);
      });
      await expect(attempt).rejects.toThrow(/unique/i);
      expect(await find("taster", 1, oneOfEach(1).taster.id)).toBeNull();
    });

    it("cannot be written to after the transaction ended", async () => {
      await addTasters(1, 0);
      let escaped: Records | undefined;
      await store.transaction(async (records) => {
        escaped = records;
      });
      await expect(escaped?.insert("taster", oneOfEach(1).taster)).rejects.toThrow(/has ended/);
      expect(await find("taster", 1, oneOfEach(1).taster.id)).toBeNull();
    });

    it("refuses a row of a household that does not exist, and one that points into another household", async () => {
      await addTasters(1, 0);
      await insertAll(oneOfEach(2));
      const insert = <N extends TableName>(table: N, row: Tables[N]) =>
        store.transaction((records) => records.insert(table, row));
      await expect(insert("taster", oneOfEach(3).taster)).rejects.toThrow(/foreign key constraint/i);
      const recipe = { ...oneOfEach(1).recipe, targetWhiskeyId: oneOfEach(2).whiskey.id };
      await expect(insert("recipe", recipe)).rejects.toThrow(/foreign key constraint/i);
      expect(await find("recipe", 1, recipe.id)).toBeNull();
    });

    it("S1: shows nothing of a household to another, by any method and in any table", async () => {
      const theirs = oneOfEach(2);
      await insertAll(oneOfEach(1));
      await insertAll(theirs);
      const ours = id("household", 1);
      for (const table of tableNames) {
        const { id: rowId } = theirs[table];
        await store.transaction(async (records) => {
          expect(await records.find(table, ours, rowId), table).toBeNull();
          const listed = await records.list(table, ours, { where: { id: rowId } });
          expect(listed, table).toStrictEqual([]);
          for (const row of await records.list(table, ours)) expect(row.householdId).toBe(ours);
          expect(await records.remove(table, ours, rowId), table).toBe(false);
          const stolen = { ...theirs[table], householdId: ours, version: 2 };
          expect(await records.replace(table, stolen), table).toBe(false);
        });
      }
      await store.transaction((records) => records.removeHousehold(ours));
      for (const table of tableNames) {
        const kept = await store.transaction((records) => records.list(table, theirs.household.id));
        expect(kept, table).toStrictEqual([theirs[table]]);
        const gone = await store.transaction((records) => records.list(table, ours));
        expect(gone, table).toStrictEqual([]);
      }
    });

    it("numbers each household's ledger apart, and goes on after numbers that were restored", async () => {
      await addTasters(1, 0);
      await insertAll(oneOfEach(2));
      const next = (household: number) =>
        store.transaction((records) => records.nextSeq(id("household", household)));
      expect([await next(1), await next(1), await next(2), await next(1)]).toStrictEqual([1, 2, 2, 3]);
      await store.transaction((records) =>
        records.insert("transfer", {
          ...oneOfEach(1).transfer,
          ...withNulls.transfer,
          seq: 41,
        }),
      );
      expect([await next(1), await next(1)]).toStrictEqual([42, 43]);
    });

    it("gives a number twice to no two of 60 transactions at once", async () => {
      await addTasters(1, 0);
      const numbers = await Promise.all(
        Array.from({ length: 60 }, () => store.transaction((records) => records.nextSeq(id("household", 1)))),
      );
      expect(numbers.toSorted((a, b) => a - b)).toStrictEqual(Array.from({ length: 60 }, (_, i) => i + 1));
    });

    it("of many at once each is whole or not at all: one that throws and one the database refuses undo no other", async () => {
      await addTasters(1, 0);
      const row = oneOfEach(1).taster;
      const add = (i: number) =>
        store.transaction(async (records) => {
          await records.insert("taster", { ...row, id: id("taster", i), name: `first of ${i}` });
          // One of them names a household that there is none of, which shows when it is committed.
          const household = i === 7 ? id("household", 9) : row.householdId;
          await records.insert("taster", { ...row, householdId: household, id: id("taster", 100 + i) });
          if (i === 9) throw new Error("changed its mind");
          return i;
        });
      const ended = await Promise.allSettled(Array.from({ length: 20 }, (_, i) => add(i)));
      const kept = ended.flatMap((end) => (end.status === "fulfilled" ? [end.value] : []));
      expect(kept).toStrictEqual(Array.from({ length: 20 }, (_, i) => i).filter((i) => i !== 7 && i !== 9));
      const reasons = ended.flatMap((end) => (end.status === "rejected" ? [String(end.reason)] : []));
      expect(reasons).toStrictEqual([
        expect.stringMatching(/foreign key constraint/i),
        expect.stringMatching(/changed its mind/),
      ]);
      const rows = await store.transaction((records) => records.list("taster", row.householdId));
      expect(rows.map((found) => found.id)).toStrictEqual(
        [...kept.map((i) => id("taster", i)), ...kept.map((i) => id("taster", 100 + i))].toSorted(),
      );
    });

    it("snapshot: two that write the same row meet, and one of them runs again", async () => {
      await addTasters(1, 1);
      const household = id("household", 1);
      const edit = (name: string) =>
        store.transaction(async (records) => {
          const old = await records.find("taster", household, id("taster", 1001));
          if (!old) throw new Error("a taster is needed");
          await pause(20);
          return records.replace("taster", { ...old, version: old.version + 1, name: `${old.name} ${name}` });
        }, "snapshot");
      expect(await Promise.all([edit("one"), edit("two")])).toStrictEqual([true, true]);
      expect((await find("taster", 1, id("taster", 1001)))?.name.split(" ").toSorted()).toStrictEqual([
        "odd",
        "one",
        "two",
      ]);
    });

    it("reads without a transaction, and sees what was committed", async () => {
      await addTasters(1, 3);
      const rows = await store.read((records) => records.list("taster", id("household", 1)));
      expect(rows).toHaveLength(3);
    });

    it("lets exactly one of 20 edits of the same version win", async () => {
      await addTasters(1, 1);
      const row = { ...oneOfEach(1).taster, id: id("taster", 1001), version: 2 };
      const won = await Promise.all(
        Array.from({ length: 20 }, (_, i) =>
          store.transaction((records) => records.replace("taster", { ...row, name: `edit ${i}` })),
        ),
      );
      expect(won.filter(Boolean)).toHaveLength(1);
      expect((await find("taster", 1, row.id))?.name).toBe(`edit ${won.indexOf(true)}`);
    });

    it("is serializable: of two that each read what the other writes, the second sees the first", async () => {
      // Write skew: each removes itself only while the other is still there. Snapshots alone would lose both.
      await addTasters(1, 2);
      const household = id("household", 1);
      const bothHaveRead = Promise.withResolvers<void>();
      const readers: number[] = [];
      const leave = (number: number) =>
        store.transaction(async (records) => {
          const there = await records.list("taster", household);
          if (readers.push(number) === 2) bothHaveRead.resolve();
          // Where one comes after the other it waits in vain.
          await Promise.race([bothHaveRead.promise, pause(300)]);
          if (there.length === 2) await records.remove("taster", household, id("taster", number));
        });
      await Promise.all([leave(1001), leave(1002)]);
      expect(await store.transaction((records) => records.list("taster", household))).toHaveLength(1);
    });

    it("lets short transactions break a long one at most once", async () => {
      await addTasters(1, 1);
      const seen = { attempts: 0, shorts: 0, done: false };
      const edit = (between: () => Promise<void>) =>
        store.transaction(async (records) => {
          const row = await records.find("taster", id("household", 1), id("taster", 1001));
          await between();
          return row !== null && records.replace("taster", { ...row, version: row.version + 1 });
        });
      // Between reading and writing the long one waits for a short one to get in; when alone, in vain.
      const long = edit(async () => {
        seen.attempts++;
        const before = seen.shorts;
        for (let waited = 0; waited < 300 && seen.shorts === before; waited += 5) await pause(5);
      }).finally(() => {
        seen.done = true;
      });
      while (!seen.done && seen.attempts < 10) {
        expect(await edit(() => Promise.resolve())).toBe(true);
        seen.shorts++;
      }
      expect(await long).toBe(true);
      expect(seen.attempts).toBeLessThanOrEqual(2);
      expect((await find("taster", 1, id("taster", 1001)))?.version).toBe(1 + 1 + seen.shorts);
    });

    it("keeps two stores over the same database apart: 20 additions from each, none lost", async () => {
      await addTasters(1, 0);
      const { store: second } = await openDatabase(place.place);
      try {
        const numbers = await Promise.all(
          Array.from({ length: 40 }, (_, i) =>
            (i % 2 ? store : second).transaction((records) => records.nextSeq(id("household", 1))),
          ),
        );
        expect(new Set(numbers).size).toBe(40);
      } finally {
        await second.close();
      }
    });

    it("refuses what comes after it was closed", async () => {
      const { store: second } = await openDatabase(place.place);
      await second.close();
      await expect(second.read((records) => records.households())).rejects.toThrow(/destroyed/);
      await expect(second.transaction((records) => records.households())).rejects.toThrow(/destroyed/);
    });

    it("is there again after it was closed", async () => {
      const rows = oneOfEach(1);
      await insertAll(rows);
      await store.close();
      ({ store } = await openDatabase(place.place));
      expect(await find("sheet", 1, rows.sheet.id)).toStrictEqual(rows.sheet);
    });
  });
});
