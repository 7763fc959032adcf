import type { LearnedWord } from "../../protocol/index.ts";
import type { Reads } from "../ports.ts";
import { type Revealed, type SettledWord, settled } from "./settled.ts";

async function revealedAt(records: Reads, household: string): Promise<Revealed> {
  const flights = await records.list("flight", household, { where: { state: "revealed" } });
  return new Map(flights.map(({ id, revealedAt: at }) => [id, at ?? ""]));
}

export async function settledWords(records: Reads, household: string): Promise<readonly SettledWord[]> {
  const rows = await records.list("taughtWord", household);
  return rows.length === 0 ? [] : settled(rows, await revealedAt(records, household));
}

/** The number of the next word taught in a household. */
export async function nextNumber(records: Reads, household: string): Promise<number> {
  const rows = await records.list("taughtWord", household);
  return rows.reduce((most, { number }) => Math.max(most, number), 0) + 1;
}

export const inUse = (words: readonly SettledWord[]): readonly LearnedWord[] =>
  words.flatMap(({ phrase, means }) => (means === null ? [] : [{ phrase, attribute: means }]));

/** V4: the words that everything of a household is read by. */
export const wordsOf = async (records: Reads, household: string): Promise<readonly LearnedWord[]> =>
  inUse(await settledWords(records, household));
