import { shuffleWords } from "@partsproof/core/sensory";
import { temporaryHouse } from "@partsproof/testkit";
import { expect, test } from "vitest";
import { whereEnded } from "./where-ended.ts";

test("alone, the undersides say where each glass of the row ended", async () => {
  await using house = await temporaryHouse("sqlite");
  const { client } = house;
  const { id: household } = await client("addHousehold", { body: { name: "Alone" } });
  const at = { household };
  const { id: tasterId } = await client("addTaster", { at, body: { name: "Tam" } });
  const vessels: string[] = [];
  for (const name of ["Tarn", "Skerry", "Voe"]) {
    const whiskey = await client("addWhiskey", {
      at,
      body: { maker: "Saltreach", name, strength: { basis: "abv20", value: 46 } },
    });
    vessels.push((await client("addBottle", { at, body: { whiskeyId: whiskey.id } })).id);
  }
  const made = await client("addFlight", {
    at,
    body: {
      name: "By myself",
      pouring: "alone",
      glasses: vessels.map((vesselId) => ({ vesselId })),
      pourMl: 10,
      tasterIds: [tasterId],
    },
  });
  const flight = { household, flight: made.flight.id };
  const sheet = { ...flight, sheet: made.flight.sheets[0]?.sheetId ?? "" };
  const { token } = await client("takeSheet", { at: sheet, body: { ofLegalAge: true } });
  await client("markPoured", { at: flight, token });
  const { version } = await client("getSheet", { at: sheet, token });
  await client("lockSheet", { at: sheet, token, body: { version } });
  // A ended at place 2, B at 1, C where it stood.
  const marks = ["B", "A", "C"].map((mark, i) => ({ place: i + 1, mark }));
  await client("enterUndersides", { at: flight, token, body: { marks } });
  const finding = await client("revealFlight", { at: flight, token: made.hostToken, body: {} });
  expect(whereEnded(finding)).toEqual([1, 0, 2]);
  // By counting the 6 orders: 4 leave a glass or more in its place.
  expect(shuffleWords([1, 0, 2]).pInPlace).toBeCloseTo(4 / 6, 12);
});
