import type { Ask } from "./ask.ts";

interface Listed<T> {
  readonly items: readonly T[];
}
interface Named {
  readonly id: string;
  readonly name: string;
}
interface Vessel {
  readonly id: string;
  readonly label: string;
  readonly whiskeyId: string | null;
  readonly keptMl: number;
  readonly contents: { readonly volumeMl: number };
}
interface Flight extends Named {
  readonly state: string;
  readonly pouring: string;
  readonly sheets: readonly { readonly sheetId: string }[];
  readonly namesOnOffer: readonly { readonly nameId: string; readonly count: number }[];
}
interface Made {
  readonly flight: Flight;
  readonly hostToken: string;
  readonly pourerToken: string | null;
}
interface Sheet {
  readonly version: number;
  readonly glasses: readonly { readonly code: string }[];
}

/** A flight with a sheet whose token is known here. */
interface Tasted {
  readonly flight: string;
  readonly sheet: string;
  readonly codes: readonly string[];
  readonly version: number;
}

export interface Scene {
  readonly home: string;
  readonly bottle: string;
  readonly blend: string;
  readonly whiskey: string;
  readonly recipe: string;
  readonly batch: string;
  readonly toPour: { readonly flight: string; readonly sheet: string; readonly pourerToken: string };
  readonly waiting: Tasted;
  readonly tasting: Tasted;
  readonly locked: Tasted;
  readonly aloneFree: string;
  readonly alonePouring: string;
  readonly aloneLocked: string;
  readonly revealed: string;
  readonly revealedAlone: string;
  /** What the phone that looks holds: token by the key it is kept under. */
  readonly tokens: Readonly<Record<string, string>>;
}

const NOTES = [
  ["Orange peel, wax", "Rye bread, fig, a little salt", "Long, slightly bitter"],
  ["Toffee, pear", "Hot at first, then toffee", "Brine"],
  ["Clove, honey", "Even; nothing sticks out", "Clove for a minute"],
] as const;

/** The invented household, and in it a flight at every stage of an evening. */
export async function setScene(ask: Ask): Promise<Scene> {
  const household = await ask<Named>("POST", "/api/demo");
  const api = `/api/households/${household.id}`;
  const every = async <T>(what: string): Promise<readonly T[]> =>
    (await ask<Listed<T>>("GET", `${api}/${what}?limit=200`)).items;
  const [vessels, tasters, recipes, batches, flights] = await Promise.all([
    every<Vessel>("vessels"),
    every<Named>("tasters"),
    every<Named>("recipes"),
    every<Named & { readonly vesselId: string; readonly state: string }>("batches"),
    every<Flight>("flights"),
  ]);
  // Enough for every flight below; what the invented evenings left in a bottle is the demo's affair.
  const full = vessels.filter(
    ({ whiskeyId, contents, keptMl }) => whiskeyId !== null && contents.volumeMl - keptMl > 250,
  );
  const glasses = full.slice(0, 4).map(({ id }) => id);
  if (glasses.length < 4)
    throw new Error(`the scene requires four bottles with 250 mL, got ${glasses.length}`);
  const batch = batches.find(({ state }) => state === "resting") ?? batches[0];
  const recipe = recipes.find(({ name }) => name === "Wick and Rye") ?? recipes[0];
  const done = flights.filter(({ state }) => state === "revealed");
  const revealed = done.find(({ name }) => name === "Beside the Lamp") ?? done[0];
  const revealedAlone = done.find(({ pouring }) => pouring === "alone") ?? revealed;
  if (!batch || !recipe || !revealed || !revealedAlone)
    throw new Error("the demo requires batches, recipes, flights");

  const tokens: Record<string, string> = {};
  const set = async (name: string, alone: boolean, of = glasses): Promise<Made> => {
    const made = await ask<Made>("POST", `${api}/flights`, {
      name,
      pouring: alone ? "alone" : "someone else",
      glasses: of.map((vesselId) => ({ vesselId })),
      pourMl: alone ? 4 : 5,
      tasterIds: tasters.slice(0, alone ? 1 : 3).map(({ id }) => id),
      pourer: alone ? null : "Wynna",
    });
    tokens[`token.host.${made.flight.id}`] = made.hostToken;
    return made;
  };
  const take = async ({ flight }: Made, which = 0): Promise<Tasted & { readonly token: string }> => {
    const sheet = flight.sheets[which]?.sheetId ?? "";
    const at = `${api}/flights/${flight.id}/sheets/${sheet}`;
    const taken = await ask<{ readonly token: string; readonly sheet: Sheet }>("POST", `${at}/take`, {
      ofLegalAge: true,
    });
    tokens[`token.sheet.${sheet}`] = taken.token;
    const codes = taken.sheet.glasses.map(({ code }) => code);
    return { flight: flight.id, sheet, codes, version: taken.sheet.version, token: taken.token };
  };
  const poured = (made: Made, token: string): Promise<unknown> =>
    ask("POST", `${api}/flights/${made.flight.id}/poured`, undefined, token);
  /** Notes on the first so many glasses, names for one fewer, a ranking if all are noted. */
  const write = async (
    made: Made,
    tasted: Tasted & { readonly token: string },
    noted: number,
  ): Promise<Sheet> => {
    const { codes, token } = tasted;
    const names = made.flight.namesOnOffer.flatMap(({ nameId, count }) => Array<string>(count).fill(nameId));
    const notes = codes.slice(0, noted).map((code, i) => {
      const [nose = "", palate = "", finish = ""] = NOTES[i % NOTES.length] ?? [];
      return {
        code,
        first: { nose, palate, finish },
        second: { nose: i % 2 === 0 ? "Softer now" : "", palate: "", finish: "" },
        score: i === 0 ? 84 : null,
      };
    });
    const guesses = codes.slice(0, noted - 1).map((code, i) => ({ code, nameId: names[i] ?? null }));
    const [a = "", b = "", ...rest] = codes;
    const ranking =
      noted === codes.length ? [[b], [a, ...rest.slice(0, 1)], ...rest.slice(1).map((c) => [c])] : null;
    const at = `${api}/flights/${tasted.flight}/sheets/${tasted.sheet}`;
    return ask<Sheet>("PATCH", at, { version: tasted.version, notes, guesses, ranking }, token);
  };
  const lock = (tasted: Tasted & { readonly token: string }, { version }: Sheet): Promise<unknown> =>
    ask("POST", `${api}/flights/${tasted.flight}/sheets/${tasted.sheet}/lock`, { version }, tasted.token);

  const toPour = await set("Four by the window", false);
  const waitingFlight = await set("Before the pouring", false);
  const waiting = await take(waitingFlight);

  const tastingFlight = await set("Wednesday, blind", false);
  const tasting = await take(tastingFlight);
  await poured(tastingFlight, tastingFlight.pourerToken ?? "");
  await write(tastingFlight, tasting, 4);

  const lockedFlight = await set("All locked", false);
  await poured(lockedFlight, lockedFlight.pourerToken ?? "");
  const locked = await take(lockedFlight);
  for (const [i, one] of [locked, await take(lockedFlight, 1), await take(lockedFlight, 2)].entries()) {
    await lock(one, await write(lockedFlight, one, i === 2 ? 3 : 4));
  }

  const three = glasses.slice(0, 3);
  const aloneFree = await set("Alone, not begun", true, three);
  const alonePouring = await set("Alone with three", true, three);
  await take(alonePouring);
  const aloneLocked = await set("Alone, locked", true, three);
  const mine = await take(aloneLocked);
  await poured(aloneLocked, mine.token);
  await lock(mine, await write(aloneLocked, mine, 3));

  return {
    home: `/h/${household.id}`,
    bottle: glasses[1] ?? "",
    blend: batch.vesselId,
    whiskey: vessels.find(({ id }) => id === glasses[0])?.whiskeyId ?? "",
    recipe: recipe.id,
    batch: batch.id,
    toPour: {
      flight: toPour.flight.id,
      sheet: toPour.flight.sheets[1]?.sheetId ?? "",
      pourerToken: toPour.pourerToken ?? "",
    },
    waiting,
    tasting,
    locked,
    aloneFree: aloneFree.flight.id,
    alonePouring: alonePouring.flight.id,
    aloneLocked: aloneLocked.flight.id,
    revealed: revealed.id,
    revealedAlone: revealedAlone.id,
    tokens,
  };
}
