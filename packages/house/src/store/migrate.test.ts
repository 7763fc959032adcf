import { readFileSync } from "node:fs";
import {
  eachDatabase,
  openDatabase,
  openDialect,
  type TemporaryDatabase,
  temporaryDatabase,
} from "@partsproof/testkit";
import { Kysely, sql } from "kysely";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { TableName } from "../services/index.ts";
import { oneOfEach, oneOfEachOfHouse } from "./fixtures/rows.ts";
import { migrate } from "./migrate.ts";
import { migrations } from "./migrations/index.ts";
import type { Database } from "./query.ts";
import { columnsOf } from "./row.ts";
import { sqlName } from "./names.ts";
import { houseTableNames, tableNames } from "./tables.ts";

const versions = Object.keys(migrations);
const newest = oneOfEach(1);
const { glasses, codes, nonce, salts } = newest.flightKey.opened ?? { glasses: [], codes: [] };
const inOneRow = codes.map(({ set: _, ...code }) => code);
const { strengths: __, typedBy: ___, ...unmeasured } = newest.entry.written;
const { answers: _, ...written } = unmeasured;
/** What the rows of every version before 0010 are given for what it added. */
const beforePlace = { whiskey: { place: null } };
/** What the rows of every version before 0007 are given for what it added. */
const beforeMaking = { ...beforePlace, batch: { reduction: null } };
/** What the rows of every version before 0005 are given for what it added. */
const beforeStrengths = {
  sheet: { strengths: [], typedBy: null },
  entry: { written: unmeasured },
};
/** What the rows of every version before 0004 are given for what it added. */
const beforeSets = {
  flight: { question: "which_is_which", design: null },
  flightKey: { opened: { glasses, codes: inOneRow, nonce, salts } },
  sheet: { ...beforeStrengths.sheet, answers: [] },
  entry: { written },
};

/** What came after a version: tables of which it has no row, and fields with what its rows are given for them. */
const after: Readonly<
  Record<
    string,
    {
      readonly tables: readonly string[];
      readonly fields: Partial<Record<TableName, Readonly<Record<string, unknown>>>>;
    }
  >
> = {
  "0001_beginning": {
    tables: ["entry", "taughtWord", "joining", "guest", "liveCount", "liveEvent", ...houseTableNames],
    fields: {
      taster: { guest: false },
      sheet: { ...beforeSets.sheet, entries: 0 },
      flight: { ...beforeSets.flight, commitment: null, closing: null },
      flightKey: { opened: { glasses, codes: inOneRow } },
      ...beforeMaking,
      whiskey: { ...beforePlace.whiskey, profile: null },
    },
  },
  "0002_table": {
    tables: ["taughtWord"],
    fields: { ...beforeSets, ...beforeMaking, whiskey: { ...beforePlace.whiskey, profile: null } },
  },
  "0003_profile": { tables: ["taughtWord"], fields: { ...beforeSets, ...beforeMaking } },
  "0004_question": { tables: ["taughtWord"], fields: { ...beforeStrengths, ...beforeMaking } },
  "0005_strengths": { tables: ["taughtWord"], fields: beforeMaking },
  "0006_words": { tables: [], fields: beforeMaking },
  "0007_making": { tables: [], fields: beforePlace },
  "0008_passing_on": { tables: [], fields: beforePlace },
  "0009_rest": { tables: [], fields: beforePlace },
};

/** Tables by the version that made them: rows of an older one have none. */
const madeBy: Partial<Record<string, string>> = {
  trialSet: "0007_making",
  passedFile: "0008_passing_on",
  rest: "0009_rest",
  oakPiece: "0009_rest",
  checkTasting: "0009_rest",
  calendarLink: "0009_rest",
};

/** The statements of fixtures/<version>.sql, which wrote rows when that version was the newest. */
const rowsOf = (version: string): readonly string[] =>
  readFileSync(new URL(`fixtures/${version}.sql`, import.meta.url), "utf8")
    .split(";\n")
    .filter((statement) => statement.trim() !== "");

eachDatabase((database) => {
  describe(`migrations on ${database}`, () => {
    let place: TemporaryDatabase;
    beforeEach(async () => {
      place = await temporaryDatabase(database);
    });
    afterEach(() => place.remove());

    const onTables = async <T>(work: (db: Kysely<Database>) => Promise<T>): Promise<T> => {
      const { dialect } = await openDialect(place.place);
      const db = new Kysely<Database>({ dialect });
      try {
        return await work(db);
      } finally {
        await db.destroy();
      }
    };
    const schema = () =>
      onTables(async (db) => {
        const tables = await db.introspection.getTables();
        return tables
          .filter(({ name }) => !name.startsWith("house_migration"))
          .map(({ name, columns }) => ({
            name,
            columns: columns.map((c) => ({ name: c.name, type: c.dataType, nullable: c.isNullable })),
          }))
          .toSorted((a, b) => (a.name < b.name ? -1 : 1));
      });

    it("the newest version has exactly the tables and columns that tables.ts describes", async () => {
      await (await openDatabase(place.place)).store.close();
      const described = [...tableNames, ...houseTableNames].map((table) => ({
        name: sqlName(table),
        columns: columnsOf(table)
          .map(({ name }) => name)
          .toSorted(),
      }));
      const found = (await schema())
        .filter(({ name }) => name !== "ledger_counter")
        .map(({ name, columns }) => ({ name, columns: columns.map((c) => c.name).toSorted() }));
      expect(found).toStrictEqual(described.toSorted((a, b) => (a.name < b.name ? -1 : 1)));
    });

    it("opening it again changes nothing", async () => {
      await (await openDatabase(place.place)).store.close();
      const [before, steps] = [await schema(), await onTables(taken)];
      await (await openDatabase(place.place)).store.close();
      expect(await schema()).toStrictEqual(before);
      expect(await onTables(taken)).toStrictEqual(steps);
    });

    // From every version there ever was, with rows in it. A new step needs a fixture of its own version as well.
    for (const [index, version] of versions.entries()) {
      it(`a house of version ${version} opens with every row in it`, async () => {
        const upToIt = Object.fromEntries(Object.entries(migrations).slice(0, index + 1));
        await onTables(async (db) => {
          await migrate(db, database, upToIt);
          expect((await taken(db)).map(({ name }) => name)).toStrictEqual(versions.slice(0, index + 1));
          await db.transaction().execute(async (transaction) => {
            for (const row of rowsOf(version)) await sql.raw(row).execute(transaction);
          });
        });
        const { store } = await openDatabase(place.place);
        try {
          const rows = oneOfEach(1);
          const { tables = [], fields = {} } = after[version] ?? {};
          for (const table of tableNames) {
            const [row] = await store.transaction((records) => records.list(table, rows[table].householdId));
            const none = tables.includes(table) || version < (madeBy[table] ?? "");
            const kept = none ? undefined : { ...rows[table], ...fields[table] };
            expect(row, table).toStrictEqual(kept);
          }
          const ofHouse = oneOfEachOfHouse(1);
          for (const table of houseTableNames) {
            const [row] = await store.transaction((records) => records.ofHouse.list(table));
            expect(row, table).toStrictEqual(tables.includes(table) ? undefined : ofHouse[table]);
          }
          expect(await store.transaction((records) => records.nextSeq(rows.household.id))).toBe(8);
        } finally {
          await store.close();
        }
      });
    }

    it("a step that fails leaves nothing of itself", async () => {
      await onTables(async (db) => {
        await migrate(db, database);
        const before = await schema();
        const failing = {
          ...migrations,
          "9998_half": async (on: Kysely<Database>) => {
            await on.schema.createTable("half").addColumn("id", "text").execute();
            throw new Error("in the middle");
          },
        };
        await expect(migrate(db, database, failing)).rejects.toThrow("in the middle");
        expect(await schema()).toStrictEqual(before);
        expect((await taken(db)).map(({ name }) => name)).toStrictEqual(versions);
      });
    });

    it("a house of a newer version is refused, and says so", async () => {
      await onTables((db) =>
        migrate(db, database, { ...migrations, "9999_from_the_future": async () => undefined }),
      );
      await expect(openDatabase(place.place)).rejects.toThrow(
        `store requires tables of version ${versions.at(-1)} or older, got 9999_from_the_future: a newer version`,
      );
    });

    it("two processes that open an empty database at once both find it whole", async () => {
      const opened = await Promise.all([openDatabase(place.place), openDatabase(place.place)]);
      for (const { store } of opened) {
        expect(await store.transaction((records) => records.households())).toStrictEqual([]);
        await store.close();
      }
      expect((await onTables(taken)).map(({ name }) => name)).toStrictEqual(versions);
    });
  });
});

const taken = async (db: Kysely<Database>) =>
  (await sql<{ name: string; timestamp: string }>`select * from house_migration order by name`.execute(db))
    .rows;
