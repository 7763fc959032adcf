import { follow, type LiveMessage, type LiveState } from "@partsproof/house/protocol";
import { temporaryHouse } from "@partsproof/testkit";
import { expect, test } from "vitest";
import { foldLive } from "./live-fold.ts";

test("a table folded from its first state and all events stands as a new stream says it stands", async () => {
  await using house = await temporaryHouse("sqlite");
  const { client } = house;
  const { id: household } = await client("addHousehold", { body: { name: "Live" } });
  const at = { household };
  const whiskey = await client("addWhiskey", {
    at,
    body: { maker: "Saltreach", name: "Tarn", strength: { basis: "abv20", value: 46 } },
  });
  const { id: vesselId } = await client("addBottle", { at, body: { whiskeyId: whiskey.id } });
  const tasterIds = [];
  for (const name of ["Ana", "Bo"]) tasterIds.push((await client("addTaster", { at, body: { name } })).id);
  const { flight, hostToken, pourerToken } = await client("addFlight", {
    at,
    body: {
      name: "Tuesday",
      pouring: "someone else",
      pourer: "Pat",
      pourMl: 10,
      tasterIds,
      glasses: [{ vesselId }, { vesselId }],
    },
  });
  const table = { household, flight: flight.id };
  const streamed = async (most: number, after?: number): Promise<readonly LiveMessage[]> => {
    const stop = new AbortController();
    const messages: LiveMessage[] = [];
    const call = { at: table, signal: stop.signal, ...(after === undefined ? {} : { after }) };
    for await (const message of follow((request) => house.fetch(request), "http://house.invalid", call)) {
      messages.push(message);
      if (messages.length === most) break;
    }
    stop.abort();
    return messages;
  };
  const [first] = await streamed(1);
  if (first?.kind !== "state") throw new Error("a stream begins with how the table stands");
  const [ana, bo] = flight.sheets.map(({ sheetId }) => ({ ...table, sheet: sheetId }));
  if (!ana || !bo) throw new Error("two sheets are needed");
  const { token } = await client("takeSheet", { at: ana, body: { ofLegalAge: true } });
  await client("markPoured", { at: table, token: pourerToken ?? "" });
  await client("atGlass", { at: ana, token, body: { position: 2 } });
  const { version } = await client("getSheet", { at: ana, token });
  await client("lockSheet", { at: ana, token, body: { version } });
  await client("revealFlight", { at: table, token: hostToken, body: { closeOpenSheets: true } });
  await client("openGlass", { at: table, token: hostToken, body: { count: 1 } });

  const [now] = await streamed(1);
  if (now?.kind !== "state") throw new Error("a stream begins with how the table stands");
  const events = await streamed(now.seq - first.seq, first.seq);
  const folded = events.reduce<LiveState | null>(foldLive, first);
  expect(events.length).toBeGreaterThanOrEqual(6);
  expect(folded).toEqual(now);
  // Sent again, as after a lost connection, an event changes nothing.
  expect(events.reduce<LiveState | null>(foldLive, folded)).toEqual(now);
  expect(foldLive(null, events[0] as LiveMessage)).toBeNull();
});
