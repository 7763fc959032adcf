import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "@partsproof/house/protocol";
import { spawnServer, temporaryDatabase } from "@partsproof/testkit";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openEmbeddedHouse } from "./index.ts";

describe("the server as a process", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "partsproof-start-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it("starts on an empty folder, says where it is and what it keeps, answers, and ends on SIGTERM", async () => {
    const server = await spawnServer({ PARTSPROOF_DATA: folder });
    const client = createClient(fetch, server.address);
    expect(await client("health")).toStrictEqual({ ok: true, database: "sqlite" });
    const { id } = await client("addHousehold", { body: { name: "North", currency: "EUR" } });
    expect(await server.end("SIGTERM")).toStrictEqual({ code: 0, signal: null });

    const printed = server.printed();
    expect(printed).toMatch(/^Parts & Proof is open at http:\/\/127\.0\.0\.1:\d+$/m);
    expect(printed).toContain(`\nDatabase: SQLite, ${join(folder, "house.db")}\n`);
    expect(printed).toContain(`\nData folder: ${folder}\n`);
    expect(printed).not.toContain(readFileSync(join(folder, "seal.key"), "utf8").trim());
    // Closed as it should be: SQLite has put its log back into the file.
    expect(readdirSync(folder).toSorted()).toStrictEqual(["house.db", "seal.key"]);

    const house = await openEmbeddedHouse(folder);
    const kept = await createClient(house.fetch, "http://house.test")("getHousehold", {
      at: { household: id },
    });
    expect(kept.name).toBe("North");
    await house.close();
  });

  it("keeps its rows in the PostgreSQL that DATABASE_URL names, and prints no password", async () => {
    const database = await temporaryDatabase("postgresql");
    try {
      const env = { PARTSPROOF_DATA: folder, DATABASE_URL: database.place };
      const first = await spawnServer(env);
      const { id } = await createClient(fetch, first.address)("addHousehold", {
        body: { name: "South", currency: "USD" },
      });
      expect(await first.end("SIGINT")).toStrictEqual({ code: 0, signal: null });
      expect(first.printed()).toMatch(/^Database: PostgreSQL, 127\.0\.0\.1:\d+\/house_test_\w+$/m);
      expect(first.printed()).not.toContain(new URL(database.place).password);
      expect(readdirSync(folder)).toStrictEqual(["seal.key"]);

      const second = await spawnServer(env);
      const client = createClient(fetch, second.address);
      expect(await client("health")).toStrictEqual({ ok: true, database: "postgresql" });
      expect((await client("getHousehold", { at: { household: id } })).name).toBe("South");
      await second.end("SIGTERM");
    } finally {
      await database.remove();
    }
  });

  it("D1: refuses to listen on a network before there is an owner", async () => {
    await expect(spawnServer({ PARTSPROOF_DATA: folder, HOST: "0.0.0.0" })).rejects.toThrow(
      /ended with 1 before it listened:\nlistening for 0\.0\.0\.0 requires an owner's passphrase, got none set/,
    );
    const PARTSPROOF_ORIGIN = "https://table.home.arpa";
    await expect(spawnServer({ PARTSPROOF_DATA: folder, PARTSPROOF_ORIGIN })).rejects.toThrow(
      /listening for https:\/\/table\.home\.arpa requires an owner's passphrase/,
    );
  });

  it("says that a port is taken", async () => {
    const first = await spawnServer({ PARTSPROOF_DATA: folder });
    const PORT = new URL(first.address).port;
    await expect(spawnServer({ PARTSPROOF_DATA: folder, PORT })).rejects.toThrow(
      new RegExp(
        `server requires the free port ${PORT} on 127\\.0\\.0\\.1, got one that another program holds`,
      ),
    );
    await first.end("SIGTERM");
  });

  it("two processes share one folder: the command line writes while the server runs", async () => {
    const server = await spawnServer({ PARTSPROOF_DATA: folder });
    const outside = createClient(fetch, server.address);
    const house = await openEmbeddedHouse(folder);
    const inside = createClient(house.fetch, "http://house.test");
    const { id: household } = await inside("addHousehold", { body: { name: "Both", currency: "EUR" } });
    await Promise.all(
      Array.from({ length: 40 }, (_, i) =>
        (i % 2 ? inside : outside)("addTaster", { at: { household }, body: { name: `Taster ${i}` } }),
      ),
    );
    const { items } = await outside("listTasters", { at: { household } });
    expect(new Set(items.map(({ name }) => name)).size).toBe(40);
    await house.close();
    await server.end("SIGTERM");
  });
});
