import { temporaryHouse } from "@partsproof/testkit";
import { expect, test } from "vitest";
import { openRecovery, writeRecovery } from "./recovery.ts";

/** As little as the file allows: the cost itself is tried with the passphrases. */
const QUICK = { N: 1024, r: 8, p: 1 };
const PASSPHRASE = "salt on the stair at noon";

test("H5: with its recovery file the demo comes back byte for byte, the flight under way with it, here and elsewhere", async () => {
  await using house = await temporaryHouse("sqlite");
  const { id, name } = await house.client("loadDemo", {});
  const at = { household: id };
  const first = await house.client("exportHousehold", { at });
  const file = await writeRecovery(first, house.house.sealKey, PASSPHRASE, QUICK);
  expect(file.flights).toHaveLength(1);
  const recovery = (await openRecovery(file, PASSPHRASE)) ?? {};
  // Beside the household that it is of, no flight goes on.
  await expect(house.client("restoreHousehold", { body: { ...first, recovery } })).rejects.toThrow(
    /gone from this house/u,
  );
  await house.client("removeHousehold", { at, query: { confirm: name } });
  await house.client("restoreHousehold", { body: { ...first, recovery } });
  const second = await house.client("exportHousehold", { at });
  // SHA-256 of every table in canonical form.
  const { "(head)": _, ...sums } = first.checksums ?? {};
  const { "(head)": __, ...after } = second.checksums ?? {};
  expect(after).toEqual(sums);

  await using other = await temporaryHouse("sqlite");
  await other.client("restoreHousehold", { body: { ...first, recovery } });
  const [flight] = (await other.client("listFlights", { at, query: {} })).items.filter(
    ({ state }) => state === "tasting",
  );
  expect(flight?.sheets).toHaveLength(4);
  expect(flight?.commitment).toBe(
    first.tables["flight"]?.find((row) => row["id"] === flight?.id)?.["commitment"],
  );
});

test("another passphrase, a changed file or no file: nothing is opened, the sheets stay and the flight is called off", async () => {
  await using house = await temporaryHouse("sqlite");
  const { id, name } = await house.client("loadDemo", {});
  const at = { household: id };
  const first = await house.client("exportHousehold", { at });
  const file = await writeRecovery(first, house.house.sealKey, PASSPHRASE, QUICK);
  expect(await openRecovery(file, `${PASSPHRASE}.`)).toBeNull();
  const turned = `${file.sealed.slice(0, 30)}${file.sealed[30] === "A" ? "B" : "A"}${file.sealed.slice(31)}`;
  expect(await openRecovery({ ...file, sealed: turned }, PASSPHRASE)).toBeNull();
  expect(
    await openRecovery({ ...file, household: { ...file.household, id: `${id.slice(0, 25)}0` } }, PASSPHRASE),
  ).toBeNull();
  expect(JSON.stringify(file)).not.toContain(Buffer.from(house.house.sealKey).toString("base64url"));
  await house.client("removeHousehold", { at, query: { confirm: name } });
  const wrong = { [file.flights[0] ?? ""]: Buffer.alloc(32).toString("base64url") };
  await expect(house.client("restoreHousehold", { body: { ...first, recovery: wrong } })).rejects.toThrow(
    /key of the recovery file/u,
  );
  await house.client("restoreHousehold", { body: first });
  const flights = (await house.client("listFlights", { at, query: {} })).items;
  const under = flights.find((flight) => flight.id === file.flights[0]);
  expect(under).toMatchObject({
    state: "called off",
    name: expect.stringContaining("called off: copied before its reveal"),
  });
  expect(under?.sheets).toHaveLength(4);
});
