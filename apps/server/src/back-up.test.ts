import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { spawnServer, temporaryHouse } from "@partsproof/testkit";
import { afterEach, beforeEach, expect, test } from "vitest";
import { backUp, readBackups } from "./back-up.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "partsproof-backups-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const day = (n: number): Date => new Date(Date.UTC(2026, 10, n, 3));

test("the last so many of each household are kept, one a day, and each is restored as it was", async () => {
  await using house = await temporaryHouse("sqlite");
  const demo = await house.client("loadDemo", {});
  await house.client("addHousehold", { body: { name: "Second", currency: "EUR" } });
  writeFileSync(join(folder, "mine.json"), "left alone");
  const settings = { keep: 3, hours: 24 };
  for (let n = 1; n <= 6; n += 1) expect(await backUp(house.fetch, folder, settings, day(n))).toHaveLength(2);
  // Two hours later none is due.
  expect(await backUp(house.fetch, folder, settings, new Date(day(6).getTime() + 7_200_000))).toEqual([]);
  const files = readdirSync(folder).toSorted();
  expect(files).toHaveLength(7);
  const own = files.filter((name) => name.startsWith(demo.id));
  expect(own.map((name) => name.slice(27, 37))).toEqual(["2026-11-04", "2026-11-05", "2026-11-06"]);

  const at = { household: demo.id };
  const before = await house.client("listVessels", { at, query: { limit: 200 } });
  await house.client("removeHousehold", { at, query: { confirm: demo.name } });
  const archive = JSON.parse(readFileSync(join(folder, own[2] ?? ""), "utf8"));
  const restored = await house.client("restoreHousehold", { body: archive });
  expect(restored.id).toBe(demo.id);
  expect((await house.client("listVessels", { at, query: { limit: 200 } })).items.length).toBe(
    before.items.length,
  );
});

test("a server that is asked to keep some writes one at its start and says where", async () => {
  const data = join(folder, "data");
  const first = await spawnServer({ PARTSPROOF_DATA: data });
  const made = await fetch(`${first.address}/api/households`, {
    method: "POST",
    headers: { "content-type": "application/json", "x-partsproof": "1" },
    body: JSON.stringify({ name: "Invented", currency: "EUR" }),
  });
  expect(made.status).toBe(201);
  await first.end("SIGTERM");
  const second = await spawnServer({ PARTSPROOF_DATA: data, PARTSPROOF_BACKUPS: "2" });
  await second.end("SIGTERM");
  expect(second.printed()).toContain(
    `Backups: ${join(data, "backups")}, every 24 h, the last 2 of each household`,
  );
  const [file = ""] = readdirSync(join(data, "backups"));
  expect(JSON.parse(readFileSync(join(data, "backups", file), "utf8"))).toMatchObject({
    format: "partsproof-household",
    household: { name: "Invented" },
  });
});

test("what cannot be meant is refused with its name", () => {
  expect(readBackups({})).toBeNull();
  expect(readBackups({ PARTSPROOF_BACKUPS: "7" })).toEqual({ keep: 7, hours: 24 });
  expect(() => readBackups({ PARTSPROOF_BACKUPS: "many" })).toThrow(
    "PARTSPROOF_BACKUPS requires a whole number",
  );
  expect(() => readBackups({ PARTSPROOF_BACKUPS: "7", PARTSPROOF_BACKUP_HOURS: "0" })).toThrow(
    "PARTSPROOF_BACKUP_HOURS",
  );
});
