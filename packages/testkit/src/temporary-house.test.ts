import { describe, expect, it } from "vitest";
import { eachDatabase } from "./databases.ts";
import { temporaryDatabase } from "./temporary-database.ts";
import { temporaryHouse } from "./temporary-house.ts";

eachDatabase((database) => {
  describe(`a temporary house on ${database}`, () => {
    it("answers through its door, keeps rows, and is empty each time and for each at once", async () => {
      for (let time = 0; time < 3; time++) {
        await using first = await temporaryHouse(database);
        await using second = await temporaryHouse(database);
        expect(await first.client("health")).toStrictEqual({ ok: true, database });
        expect((await first.client("listHouseholds")).items).toStrictEqual([]);
        const { id } = await first.client("addHousehold", { body: { name: "North" } });
        expect((await first.client("getHousehold", { at: { household: id } })).createdAt).toBe(
          first.clock.now().toISOString(),
        );
        expect((await second.client("listHouseholds")).items).toStrictEqual([]);
      }
    });

    it("makes the same ids from the same seed and moment, and others from another seed", async () => {
      const idOf = async (seed: number): Promise<string> => {
        await using house = await temporaryHouse(database, { seed, now: "2026-01-05T19:00:00.000Z" });
        return (await house.client("addHousehold", { body: { name: "North" } })).id;
      };
      const [first, again, other] = [await idOf(5), await idOf(5), await idOf(6)];
      expect(again).toBe(first);
      expect(other).not.toBe(first);
    });
  });
});

describe("without a PostgreSQL to test on", () => {
  it("a test on it fails and says what is missing", async () => {
    const url = process.env["TEST_DATABASE_URL"];
    delete process.env["TEST_DATABASE_URL"];
    try {
      await expect(temporaryDatabase("postgresql")).rejects.toThrow(
        /tests on PostgreSQL require TEST_DATABASE_URL, got none/,
      );
    } finally {
      if (url !== undefined) process.env["TEST_DATABASE_URL"] = url;
    }
  });
});
