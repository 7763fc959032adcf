import type { Against, ProfileBoard, ProfileLine } from "@partsproof/house/protocol";
import { type AgainstRow, drawAgainst, Figure } from "../../plots/index.ts";
import { attributeName } from "@partsproof/core/sensory";

type Drawn = ProfileLine["attributes"][number];

const figure = (said: Drawn | null): string => (said === null ? "unknown" : said.mean.toFixed(1));
const reach = (said: Drawn | null): string =>
  said === null ? "unknown" : `${said.mean.toFixed(1)} (${said.low.toFixed(1)} to ${said.high.toFixed(1)})`;
const SAID: Readonly<Record<Against["rows"][number]["became"], string>> = {
  more: "more",
  less: "less",
  "not told apart": "not told apart",
  "not predicted": "not predicted",
  "not observed": "not observed",
};
const sign = (value: number): string => `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(1)}`;

const lineOf = (board: ProfileBoard, key: string): ProfileLine | undefined =>
  board.lines.find((line) => line.key === key);

interface AgainstProps {
  readonly board: ProfileBoard;
  readonly against: Against;
  readonly name: string;
}

/** One liquid as it was observed beside what was predicted of it; what one side is silent on is named, never drawn as 0. */
export function AgainstFigure({ board, against, name }: AgainstProps) {
  const { rows, sentence, label } = against;
  const [from, to] = [lineOf(board, against.predicted), lineOf(board, against.observed)];
  const expected = from?.kind === "kept" ? "On the shelf" : "Predicted";
  const drawn = rows.filter(({ became }) => became !== "not observed" && became !== "not predicted");
  const silent = (became: "not observed" | "not predicted"): string =>
    rows.flatMap((row) => (row.became === became ? [attributeName(row.attribute)] : [])).join(", ");
  const [unobserved, unpredicted] = [silent("not observed"), silent("not predicted")];
  const shown: AgainstRow[] = drawn.map((row) => ({
    label: attributeName(row.attribute),
    said:
      row.became === "more" || row.became === "less"
        ? `${row.became} ${sign(row.difference?.mean ?? 0)}`
        : `${figure(row.predicted)} and ${figure(row.observed)}`,
    one: row.predicted,
    other: row.observed,
  }));
  return (
    <Figure
      title={sentence}
      name={`${name}-against`}
      note={`Ring: ${expected.toLowerCase()} (${from?.said ?? ""}). Dot: observed (${to?.said ?? ""}). 0 to 10, lines hold 95 of 100.`}
      draw={(width) => drawAgainst(shown, width)}
      table={{
        heads: [label, expected, "Observed", "Difference", "p, Holm", "What it became"],
        rows: rows.map((row) => [
          attributeName(row.attribute),
          reach(row.predicted),
          reach(row.observed),
          row.difference === null
            ? ""
            : `${sign(row.difference.mean)} (${sign(row.difference.low)} to ${sign(row.difference.high)})`,
          row.pTogether === null ? "" : row.pTogether < 0.001 ? "under 0.001" : row.pTogether.toFixed(3),
          SAID[row.became],
        ]),
      }}
    >
      {unobserved !== "" && (
        <p className="small">
          <strong>Not observed</strong>, so unknown: {unobserved}.
        </p>
      )}
      {unpredicted !== "" && (
        <p className="small">
          <strong>{from?.kind === "kept" ? "Nothing on the shelf" : "Not predicted"}</strong>, so unknown:{" "}
          {unpredicted}.
        </p>
      )}
    </Figure>
  );
}

interface LineProps {
  readonly line: ProfileLine;
  readonly name: string;
}

const KIND: Readonly<Record<ProfileLine["kind"], string>> = {
  kept: "as the shelf has it",
  predicted: "as its parts predict it",
  observed: "as it was observed",
};

/** One profile by itself: there is nothing to set it against. */
export function LineFigure({ line, name }: LineProps) {
  const { label, kind, attributes, said, unknown } = line;
  if (attributes.length === 0 && unknown.length === 0) return null;
  const parts = new Set(unknown.flatMap((one) => one.parts));
  return (
    <>
      {attributes.length > 0 && (
        <Figure
          title={`${label}, ${KIND[kind]}`}
          name={`${name}-${kind}`}
          note={`0 to 10, lines hold 95 of 100; ${said}. What is not here is unknown.`}
          draw={(width) =>
            drawAgainst(
              attributes.map((one) => ({
                label: attributeName(one.attribute),
                said: one.mean.toFixed(1),
                one: kind === "observed" ? null : one,
                other: kind === "observed" ? one : null,
              })),
              width,
            )
          }
          table={{
            heads: [label, "Mean", "From", "To"],
            rows: attributes.map((one) => [
              attributeName(one.attribute),
              one.mean.toFixed(1),
              one.low.toFixed(1),
              one.high.toFixed(1),
            ]),
          }}
        />
      )}
      {unknown.length > 0 && (
        <p className="small">
          <strong>Unknown</strong>, as {[...parts].join(" and ")} {parts.size === 1 ? "says" : "say"} nothing
          of it: {unknown.map(({ attribute }) => attributeName(attribute)).join(", ")}.
        </p>
      )}
    </>
  );
}
