import type { NextFlightAnswer } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { plural } from "./figures.ts";

const parts = (by: NextFlightAnswer["glasses"][number]["parts"]): string =>
  Object.entries(by)
    .map(([id, count]) => `${count} ${id}`)
    .join(", ");

export function printNextFlight({
  glasses,
  posterior,
  stop,
  ownShare,
  scarce,
  counted,
}: NextFlightAnswer): string {
  return [
    glasses.map((glass, n) => `${n + 1}. ${parts(glass.parts)}\n   ${glass.why}`).join("\n"),
    ...(scarce.length === 0
      ? []
      : [`Too little is left of ${scarce.join(", ")} for some mixes: none of them stands in this flight.`]),
    columns(
      posterior.toSorted((a, b) => b.mean - a.mean),
      [
        { head: "Tried", cell: ({ id }) => id },
        { head: "Log worth", cell: ({ mean, sd }) => `${mean.toFixed(2)} ± ${sd.toFixed(2)}`, right: true },
        { head: "Best of them", cell: ({ pBest }) => `${(100 * pBest).toFixed(0)} %`, right: true },
      ],
      "Nothing has been tried yet.",
    ),
    `This rests on ${plural(counted.rankings, "ranking")} and ${plural(counted.marks, "mark")}.`,
    ...(ownShare === 0
      ? []
      : [`Tasters differ: ${(100 * ownShare).toFixed(0)} % of what one likes is taken to be their own.`]),
    `${stop.advised ? "Another flight is hardly worth it" : "Another flight is worth it"}. ${stop.why}`,
  ].join("\n\n");
}
