import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { newId } from "../ids.ts";
import { readOnce } from "./read-once.ts";

eachDatabase((database) => {
  describe(`reading once (${database})`, () => {
    test("what was written is read, whatever was read before", async () => {
      await using house = await temporaryHouse(database);
      const { id: householdId, createdAt } = await house.client("addHousehold", { body: { name: "Quay" } });
      await house.store.transaction(async (stored) => {
        const records = readOnce(stored);
        const row = { householdId, version: 1, createdAt, updatedAt: createdAt, name: "Ilka", guest: false };
        const ids = [newId(house), newId(house)].toSorted();
        const [first = "", second = ""] = ids;
        const names = async () => (await records.list("taster", householdId)).map(({ name }) => name);
        expect(await names()).toEqual([]);
        expect(await records.find("taster", householdId, first)).toBeNull();
        await records.insert("taster", { ...row, id: first });
        await records.insert("taster", { ...row, id: second, name: "Pell" });
        expect(await names()).toEqual(["Ilka", "Pell"]);
        expect(await records.replace("taster", { ...row, id: first, version: 2, name: "Ilka V." })).toBe(
          true,
        );
        expect((await records.find("taster", householdId, first))?.name).toBe("Ilka V.");
        expect(await records.remove("taster", householdId, second)).toBe(true);
        expect(await names()).toEqual(["Ilka V."]);
        expect(await records.list("taster", householdId, { where: { name: "Pell" } })).toEqual([]);
      });
    });
  });
});
