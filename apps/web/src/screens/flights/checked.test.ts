import { temporaryHouse } from "@partsproof/testkit";
import { expect, test } from "vitest";
import { checked } from "./checked.ts";

test("a published record: untouched, with a changed key, a changed guess, a late one, and what was not stored", async () => {
  await using house = await temporaryHouse("sqlite");
  const { client } = house;
  const { id: household } = await client("addHousehold", { body: { name: "Checked" } });
  const at = { household };
  const whiskey = await client("addWhiskey", {
    at,
    body: { maker: "Saltreach", name: "Tarn", strength: { basis: "abv20", value: 46 } },
  });
  const { id: vesselId } = await client("addBottle", { at, body: { whiskeyId: whiskey.id } });
  const taster = await client("addTaster", { at, body: { name: "Ana" } });
  const { flight, hostToken, pourerToken } = await client("addFlight", {
    at,
    body: {
      name: "Tuesday",
      pouring: "someone else",
      pourer: "Pat",
      pourMl: 10,
      tasterIds: [taster.id],
      glasses: [{ vesselId }, { vesselId }],
    },
  });
  const table = { household, flight: flight.id };
  const sheet = { ...table, sheet: flight.sheets[0]?.sheetId ?? "" };
  const taken = await client("takeSheet", { at: sheet, body: { ofLegalAge: true } });
  await client("markPoured", { at: table, token: pourerToken ?? "" });
  const [glass] = taken.sheet.glasses;
  const { entry } = await client("addEntry", {
    at: sheet,
    token: taken.token,
    body: {
      key: "a-key-of-this-test-00001",
      after: 0,
      guesses: [{ code: glass?.code ?? "", nameId: `whiskey:${whiskey.id}` }],
    },
  });
  await client("lockSheet", { at: sheet, token: taken.token, body: { after: 1 } });
  const before = await client("getRecord", { at: table });
  const stored = {
    commitment: before.commitment ?? "",
    closing: before.closing?.hash ?? "",
    receipts: [{ sheet: sheet.sheet, entry: 1, hash: entry.hash ?? "" }],
  };
  await client("revealFlight", { at: table, token: hostToken, body: {} });
  const { record } = await client("getRecord", { at: table });
  if (record === null) throw new Error("a revealed flight requires a record, got none");
  expect(checked(record, stored)).toEqual({ headline: "Nothing was changed", findings: [], unchecked: [] });

  const planted = (change: (copy: NonNullable<typeof record>) => void): string => {
    const copy = structuredClone(record);
    change(copy);
    return checked(copy, stored).headline;
  };
  expect(planted((copy) => void (copy.nonce = "0".repeat(64)))).toBe("The key was changed");
  const guess = (copy: NonNullable<typeof record>) => copy.sheets[0]?.entries[0];
  expect(
    planted((copy) => {
      const one = guess(copy);
      if (one) one.body = one.body.replace(whiskey.id, "0".repeat(26));
    }),
  ).toContain("sheet is not as it was locked");
  expect(
    planted((copy) => {
      const one = guess(copy);
      if (one) copy.sheets[0]?.entries.push({ ...one, at: copy.closing.closedAt + 1 });
    }),
  ).toContain("written after the close");
  // Another house's promise: this phone stored something else.
  expect(checked(record, { ...stored, commitment: "0".repeat(64) }).headline).toBe("The key was changed");
  const unstored = checked(record, { receipts: [] });
  expect([unstored.headline, unstored.unchecked.length]).toEqual(["The record agrees with itself", 2]);
  expect(checked({ form: "something else" }, stored).headline).toContain("no record");
});
