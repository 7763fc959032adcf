import { attributeName, mixAgainstSum } from "@partsproof/core/sensory";
import type { Against, ProfileLine } from "../../protocol/index.ts";
import { drawn, LEVEL } from "./profile-lines.ts";

const known = ({ attributes }: ProfileLine) =>
  Object.fromEntries(attributes.map(({ attribute, mean, sd }) => [attribute, { mean, sd }]));

/** Two lines of a board that stand against each other. */
export interface AgainstPair {
  readonly label: string;
  readonly predicted: ProfileLine;
  readonly observed: ProfileLine;
}

/** Y5: what was observed beside what was predicted, attribute by attribute, p made good for the whole board, and what each comes to. */
export function against(pairs: readonly AgainstPair[]): Against[] {
  const found = mixAgainstSum(
    pairs.map(({ predicted, observed }) => ({ predicted: known(predicted), observed: known(observed) })),
    LEVEL,
  );
  const looked = found.flat().filter(({ p }) => p !== null).length;
  return pairs.map(({ label, predicted, observed }, i) => {
    const rows = (found[i] ?? []).map((row) => ({
      ...row,
      predicted: row.predicted && drawn(row.attribute, row.predicted),
      observed: row.observed && drawn(row.attribute, row.observed),
      difference: row.difference && { ...row.difference },
    }));
    const other = predicted.kind === "kept" ? "what the shelf says of it" : "the sum of its parts";
    const sentence = sentenceOf(label, other, rows, looked);
    return { label, predicted: predicted.key, observed: observed.key, rows, sentence };
  });
}

function sentenceOf(label: string, other: string, rows: Against["rows"], looked: number): string {
  const of = (became: Against["rows"][number]["became"]) => rows.filter((row) => row.became === became);
  const names = (some: Against["rows"]): string =>
    some.map(({ attribute }) => attributeName(attribute)).join(", ");
  const [more, less, same] = [of("more"), of("less"), of("not told apart")];
  const compared = more.length + less.length + same.length;
  const unknown = rows.length - compared;
  const silent = unknown === 0 ? "" : `, ${unknown} unknown on one side`;
  if (compared === 0)
    return `Nothing of ${label} can be set against ${other}: no attribute is known on both sides${silent}.`;
  const how = `(p made good for ${looked} ${looked === 1 ? "comparison" : "comparisons"} by Holm’s rule)`;
  if (more.length + less.length === 0)
    return `${label} is not told apart from ${other}, which does not show that it is the same: ${compared} compared${silent} ${how}`;
  const found = [
    ...(more.length > 0 ? [`more ${names(more)}`] : []),
    ...(less.length > 0 ? [`less ${names(less)}`] : []),
  ].join(" and ");
  return `${label} has ${found} than ${other}, by more than luck; ${same.length} not told apart${silent} ${how}`;
}
