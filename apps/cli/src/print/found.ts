import type { Chance, Finding } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";

/** Words first, then the figure and how it was got. */
export const chance = ({ p, fraction, words, method }: Chance): string =>
  `${words} (p = ${Number(p.toPrecision(3))}${fraction === null ? "" : `, ${fraction}`}; ${method})`;

/** Whether two were told apart: set by set what stood there, what was picked, and what it comes to. */
export function printSets(sets: NonNullable<Finding["sets"]>): string {
  const labels = new Map(sets.between.map(({ glass, label }) => [glass, label]));
  const sheets = sets.sheets.map(({ taster, sets: own }) =>
    columns(
      own,
      [
        { head: taster, cell: ({ set }) => `set ${set}` },
        {
          head: "Stood there",
          cell: ({ glasses }) =>
            glasses.map(({ code, glass }) => `${code} ${labels.get(glass) ?? ""}`).join(", "),
        },
        { head: "Picked", cell: ({ picked }) => picked?.join(" and ") ?? "-" },
        { head: "", cell: ({ right }) => (right === null ? "" : right ? "right" : "wrong") },
      ],
      "",
    ),
  );
  const together = facts([
    ["Task", sets.task],
    ["Method", `${sets.method}, ${sets.standard}`],
    ["Expected", sets.expected === null ? null : (labels.get(sets.expected) ?? null)],
    ["Found", sets.sentence],
    ["Luck", sets.luck === null ? null : chance(sets.luck)],
  ]);
  return [...sheets, together].join("\n\n");
}

/** The glasses by closeness, and where each sheet put the hidden target. */
export function printCloseness(closeness: NonNullable<Finding["closeness"]>): string {
  const order = columns(
    closeness.order,
    [
      { head: "Place", cell: ({ place }) => String(place), right: true },
      { head: `Closest to ${closeness.target.label}`, cell: ({ label }) => label },
      { head: "", cell: ({ target }) => (target ? "the target itself" : "") },
      { head: "Mean rank", cell: ({ meanRank }) => meanRank.toFixed(2), right: true },
    ],
    "",
  );
  const put = closeness.sheets.map(({ taster, rank, of }) => `${taster}: ${rank} of ${of}`);
  const together = facts([
    ["Target put at", put.length === 0 ? null : put.join("\n")],
    ["Found", closeness.sentence],
    ["Luck", closeness.luck === null ? null : chance(closeness.luck)],
  ]);
  return [order, together].filter((part) => part !== "").join("\n\n");
}

/** Each taster's two orders side by side. */
export function printAgreement(agreement: NonNullable<Finding["agreement"]>): string {
  const sheets = agreement.sheets.map(({ taster, places, kept, pairs, luck }) =>
    [
      columns(
        places.toSorted((a, b) => a.first - b.first),
        [
          { head: taster, cell: ({ label }) => label },
          { head: "First", cell: ({ first }) => String(first), right: true },
          { head: "Second", cell: ({ second }) => String(second), right: true },
        ],
        "",
      ),
      `${kept} of ${pairs} pairs the same way again: ${chance(luck)}`,
    ].join("\n"),
  );
  return [...sheets, facts([["Found", agreement.sentence]])].join("\n\n");
}
