import { gzipSync } from "node:zlib";
import { repeatableRng } from "@partsproof/core/statistics";
import { eachDatabase, manyOf, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { Archive } from "../../protocol/index.ts";
import { canonicalJson } from "../filling/index.ts";

const LONG = process.env["PARTSPROOF_LONG"] === "1";

/** The canonical form (RFC 8785) of all that is not of the moment of writing. */
const canonical = ({ exportedAt: _, checksums: __, ...archive }: Archive): string => canonicalJson(archive);

const wiped = async (house: TemporaryHouse, { household }: Archive): Promise<void> =>
  house.client("removeHousehold", {
    at: { household: household.id ?? "" },
    query: { confirm: household.name },
  }) as Promise<never>;
const restored = async (house: TemporaryHouse, archive: Archive): Promise<Archive> => {
  const { id } = await house.client("restoreHousehold", { body: archive });
  return house.client("exportHousehold", { at: { household: id } });
};

/** The file's text, given to the house as it is: what it says, and how many households it then has. */
async function given(house: TemporaryHouse, body: BodyInit, headers: Record<string, string> = {}) {
  const answer = await house.fetch(
    new Request("http://house.test/api/restore", {
      method: "POST",
      headers: { "content-type": "application/json", ...headers },
      body,
    }),
  );
  const told = (await answer.json()) as { issues?: { code: string; path: unknown[]; limit: unknown }[] };
  const { items } = await house.client("listHouseholds", { query: {} });
  return { status: answer.status, issue: told.issues?.[0], households: items.length };
}

eachDatabase((database) => {
  describe(`H3: wiped and restored (${database})`, () => {
    test("the demo comes back byte for byte, ids and promises and all, but for the flight under way, which is called off", async () => {
      await using house = await temporaryHouse(database);
      const demo = await house.client("loadDemo", {});
      const first = await house.client("exportHousehold", { at: { household: demo.id } });
      await wiped(house, first);
      const second = await restored(house, first);
      expect(second.household).toEqual(first.household);
      const { flight: flights, sealedKeys: _, ...others } = first.tables;
      const { flight: after, sealedKeys: none, ...same } = second.tables;
      expect(none).toEqual([]);
      expect(canonicalJson(same)).toBe(canonicalJson(others));
      const under = flights?.findIndex(({ state }) => state === "tasting") ?? -1;
      expect(after?.[under]).toMatchObject({ state: "called off", id: flights?.[under]?.["id"] });
      expect(canonicalJson(after?.toSpliced(under, 1))).toBe(canonicalJson(flights?.toSpliced(under, 1)));
      // From then on all of it stays as it is.
      await wiped(house, second);
      expect(canonical(await restored(house, second))).toBe(canonical(second));
    });

    test("a household that is there is never written over: beside it a copy is made, with ids of its own", async () => {
      await using house = await temporaryHouse(database);
      const demo = await house.client("loadDemo", {});
      const at = { household: demo.id };
      const first = await house.client("exportHousehold", { at });
      const copy = await restored(house, first);
      expect(copy.household.id).not.toBe(demo.id);
      const idsOf = ({ tables }: Archive): string[] =>
        Object.values(tables).flatMap((rows) =>
          rows.flatMap(({ id }) => (typeof id === "string" ? [id] : [])),
        );
      const ids = new Set(idsOf(first));
      expect(idsOf(copy).filter((id) => ids.has(id))).toEqual([]);
      expect(canonical(await house.client("exportHousehold", { at }))).toBe(canonical(first));
    });
  });
});

const size = LONG ? { shelves: 72, evenings: 240, pours: 14_000 } : { shelves: 3, evenings: 6, pours: 300 };

describe("H3: a large household", () => {
  test("comes back byte for byte, to the last row", async () => {
    await using house = await temporaryHouse("sqlite");
    const demo = await house.client("loadDemo", {});
    const made = manyOf(await house.client("exportHousehold", { at: { household: demo.id } }), size);
    const first = await restored(house, made);
    await wiped(house, first);
    const { id } = await house.client("restoreHousehold", { body: first });
    const second = await house.client("exportHousehold", { at: { household: id } });
    expect(canonical(second)).toBe(canonical(first));
    const count = (name: string): number => first.tables[name]?.length ?? 0;
    const bottles = first.tables["vessel"]?.filter(({ kind }) => kind === "bottle").length ?? 0;
    const least = LONG ? [2000, 20_000, 3000] : [60, 600, 70];
    const got = [bottles, count("transfer"), count("sheet")];
    expect(got.map((many, n) => many >= (least[n] ?? Infinity))).toEqual([true, true, true]);
    if (LONG) {
      const many = `${bottles} bottles, ${count("transfer")} transfers, ${count("sheet")} sheets`;
      console.log(`LONG household file | ${many} | back byte for byte`);
    }
  });
});

describe("H4: a file that is not as it was written", () => {
  const places = LONG ? 1000 : 60;

  test(`cut at ${places} places, a bit turned at ${places} more: refused with where, and nothing changed`, async () => {
    await using house = await temporaryHouse("sqlite");
    const demo = await house.client("loadDemo", {});
    const text = JSON.stringify(
      await house.client("exportHousehold", { at: { household: demo.id } }),
      null,
      1,
    );
    const bytes = new TextEncoder().encode(text);
    const rng = repeatableRng(20_261_126);
    for (let n = 0; n < places; n += 1) {
      const cut = await given(house, bytes.slice(0, 1 + rng.below(bytes.length - 1)));
      expect(cut).toMatchObject({ status: 400, households: 1 });
      expect(cut.issue?.limit).toBeDefined();
      const turned = bytes.slice();
      const at = rng.below(bytes.length);
      turned[at] = (turned[at] ?? 0) ^ (1 << rng.below(8));
      const flipped = await given(house, turned);
      expect({ at, refused: [400, 422].includes(flipped.status), households: flipped.households }).toEqual({
        at,
        refused: true,
        households: 1,
      });
      expect(flipped.issue?.limit).toBeDefined();
    }
    if (LONG)
      console.log(
        `LONG household file | ${places} cuts and ${places} turned bits | every one refused with where`,
      );
  });

  test("zipped, said to be zipped, said to be 2 GB, or with names to mislead: refused with where", async () => {
    await using house = await temporaryHouse("sqlite");
    const demo = await house.client("loadDemo", {});
    const archive = await house.client("exportHousehold", { at: { household: demo.id } });
    const text = JSON.stringify(archive);
    const zip = gzipSync(text);
    expect(await given(house, zip)).toMatchObject({ status: 400, households: 1 });
    expect((await given(house, zip, { "content-encoding": "gzip" })).status).toBeGreaterThanOrEqual(400);
    expect(await given(house, `PK\u0003\u0004${text.slice(4)}`)).toMatchObject({
      status: 400,
      households: 1,
    });
    const large = await given(house, text, { "content-length": String(2 ** 31) });
    expect(large).toMatchObject({ status: 413, issue: { code: "body_too_large" }, households: 1 });
    const changed = async (
      change: (copy: { tables: Record<string, unknown>; household: Record<string, unknown> }) => void,
    ) => {
      const { checksums: _, ...copy } = JSON.parse(text);
      delete copy.household.id;
      change(copy);
      return given(house, JSON.stringify(copy));
    };
    for (const name of [
      "../../etc/passwd",
      "constructor",
      "toString",
      "__proto__ ",
      "taster\u0000",
      "TASTER",
    ]) {
      const told = await changed(({ tables }) => void (tables[name] = [{ id: "x" }]));
      expect(told).toMatchObject({
        status: 422,
        issue: { code: "archive_wrong", path: ["tables", name] },
        households: 1,
      });
    }
    // Readers of records leave this name out, so the edge looks for it, in the tables and in a row.
    const proto = { value: [{ id: "x" }], enumerable: true };
    for (const path of [
      ["tables", "__proto__"],
      ["tables", "taster", 0, "__proto__"],
    ]) {
      const told = await changed(({ tables }) => {
        const row = (tables["taster"] as object[])[0] ?? {};
        Object.defineProperty(path.length === 2 ? tables : row, "__proto__", proto);
      });
      expect(told).toMatchObject({
        status: 422,
        issue: { code: "name_unkeepable", path, received: "__proto__" },
        households: 1,
      });
    }
    const long = await changed(({ household }) => void (household["name"] = "x".repeat(5000)));
    expect(long).toMatchObject({ status: 422, households: 1 });
  });
});
