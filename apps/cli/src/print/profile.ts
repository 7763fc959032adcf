import type { Against, ProfileBoard, ProfileLine } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";

type Drawn = ProfileLine["attributes"][number];
type Row = Against["rows"][number];

const figure = (said: Drawn | null): string =>
  said === null ? "unknown" : `${said.mean.toFixed(1)} (${said.low.toFixed(1)} to ${said.high.toFixed(1)})`;

/** Every line that is set against no other, then each comparison: 0 to 10 with the interval of 95 of 100. */
export function printBoard({ headline, lines, against, scales, method }: ProfileBoard): string {
  const compared = new Set(against.flatMap(({ predicted, observed }) => [predicted, observed]));
  return [
    headline,
    ...against.map(printAgainst),
    ...lines.filter(({ key }) => !compared.has(key)).map(printLine),
    ...(scales.length < 2
      ? []
      : [
          columns(
            scales,
            [
              { head: "Taster", cell: ({ taster }) => taster },
              { head: "Says more by", cell: ({ offset }) => offset.toFixed(1), right: true },
              { head: "Stretch", cell: ({ stretch }) => stretch.toFixed(2), right: true },
            ],
            "",
          ),
        ]),
    `Method: ${method}.`,
  ].join("\n\n");
}

const printAgainst = ({ label, rows, sentence }: Against): string =>
  `${label}\n${columns(
    rows,
    [
      { head: "Attribute", cell: ({ attribute }) => attribute },
      { head: "Predicted", cell: ({ predicted }) => figure(predicted), right: true },
      { head: "Observed", cell: ({ observed }) => figure(observed), right: true },
      { head: "Difference", cell: ({ difference }: Row) => difference?.mean.toFixed(1) ?? "", right: true },
      { head: "p (Holm)", cell: ({ pTogether }) => pTogether?.toFixed(3) ?? "", right: true },
      { head: "", cell: ({ became }) => became },
    ],
    "",
  )}\n${sentence}`;

const printLine = ({ label, kind, attributes, unknown, said }: ProfileLine): string =>
  `${label}, ${kind}: ${said}\n${columns(
    attributes,
    [
      { head: "Attribute", cell: ({ attribute }) => attribute },
      { head: "0 to 10", cell: (one) => figure(one), right: true },
    ],
    "Nothing is known of it.",
  )}${unknown.length === 0 ? "" : `\nUnknown: ${unknown.map(({ attribute, parts }) => `${attribute} (${parts.join(", ")})`).join("; ")}`}`;
