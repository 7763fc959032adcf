import { attributeName } from "@partsproof/core/sensory";
import { MOST_WORDS, type Word } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { House, Records } from "../ports.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { TaughtWordRow } from "../rows.ts";
import type { SettledWord } from "./settled.ts";
import { needTeachable, tooManyWords } from "./teachable.ts";
import { inUse, nextNumber, settledWords } from "./words-of.ts";

/** V1: in the household's own place. */
export const wordHandlers: Handlers<"listWords" | "teachWord" | "forgetWord"> = {
  listWords: ({ house, at }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      return { items: await shown(records, at.household, await settledWords(records, at.household)) };
    }),

  teachWord: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const { phrase, means, tasterId, instead } = body;
      needTeachable(phrase);
      if (tasterId !== null && (await records.find("taster", at.household, tasterId)) === null)
        unknownId("taster", tasterId, ["tasterId"]);
      const words = await settledWords(records, at.household);
      const before = words.find((word) => word.phrase === phrase);
      const now = before?.means ?? null;
      if (now !== null && now !== means && now !== instead) taught(phrase, now);
      if (instead !== undefined && instead !== now && means !== now) changed(phrase, instead, now);
      const count = inUse(words).length;
      if (now === null && count >= MOST_WORDS) tooManyWords(MOST_WORDS, "a household", count);
      await keep(records, house, at.household, { phrase, means, tasterId });
      return shownOne(records, at.household, phrase);
    }),

  forgetWord: ({ house, at, body: { phrase } }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const word = (await settledWords(records, at.household)).find((one) => one.phrase === phrase);
      if (word === undefined || word.state === "forgotten") notTaught(phrase);
      await keep(records, house, at.household, { phrase, means: null, tasterId: null });
      return shownOne(records, at.household, phrase);
    }),
};

async function keep(
  records: Records,
  house: House,
  household: string,
  said: Pick<TaughtWordRow, "phrase" | "means" | "tasterId">,
): Promise<void> {
  await records.insert("taughtWord", {
    ...born(house, household),
    ...said,
    number: await nextNumber(records, household),
    flightId: null,
    sheetId: null,
    key: null,
  });
}

async function shownOne(records: Records, household: string, phrase: string): Promise<Word> {
  const words = await settledWords(records, household);
  const [word] = await shown(
    records,
    household,
    words.filter((one) => one.phrase === phrase),
  );
  return word ?? notTaught(phrase);
}

async function shown(records: Records, household: string, words: readonly SettledWord[]): Promise<Word[]> {
  if (words.length === 0) return [];
  const names = new Map((await records.list("taster", household)).map(({ id, name }) => [id, name]));
  const flights = new Map((await records.list("flight", household)).map(({ id, name }) => [id, name]));
  return words.map(({ phrase, means, state, otherwise, rows }) => ({
    phrase,
    means,
    state,
    otherwise: [...otherwise],
    history: rows.toReversed().map((row) => ({
      id: row.id,
      at: row.createdAt,
      means: row.means as Word["means"],
      taster: row.tasterId === null ? null : (names.get(row.tasterId) ?? null),
      flightId: row.flightId,
      flight: row.flightId === null ? null : (flights.get(row.flightId) ?? null),
    })),
  }));
}

/** As a person reads it and as it is given: "old wood (wood.old)". */
function inWords(means: string): string {
  const name = attributeName(means);
  return name === means ? means : `${name} (${means})`;
}

function taught(phrase: string, now: string): never {
  refuse(409, {
    code: "word_taught",
    path: ["phrase"],
    limit: "a phrase that means nothing else here, or `instead` with what it means now",
    received: now,
    message: `teaching requires a phrase that means nothing else here, got ${phrase}, which means ${inWords(now)}: change that one instead`,
  });
}

function changed(phrase: string, instead: string, now: string | null): never {
  const means = now === null ? "is not taught" : `means ${inWords(now)}`;
  refuse(409, {
    code: "word_changed",
    path: ["instead"],
    limit: now === null ? "nothing, as it is not taught" : now,
    received: instead,
    message: `changing a word requires what it means now, got ${inWords(instead)}: ${phrase} ${means}`,
  });
}

function notTaught(phrase: string): never {
  refuse(404, {
    code: "unknown_word",
    path: ["phrase"],
    limit: "a phrase that is taught in this household",
    received: phrase,
    message: `forgetting requires a phrase that is taught in this household, got ${phrase}`,
  });
}
