import type { Word } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { day } from "./figures.ts";

const taughtBy = ({ history }: Word): string => {
  const [last] = history;
  return last === undefined ? "" : `${last.taster ?? "the household"}, ${day(last.at)}`;
};

export const printWords = (words: readonly Word[]): string =>
  columns(
    words,
    [
      { head: "Phrase", cell: ({ phrase }) => phrase },
      { head: "Means", cell: ({ means, state }) => means ?? `(${state})` },
      { head: "Also taught as", cell: ({ otherwise }) => otherwise.join(", ") },
      { head: "Last by", cell: taughtBy },
    ],
    "No words of its own yet.",
  );
