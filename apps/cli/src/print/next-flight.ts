import { type NextFlightAnswer, restsOn, tooLittleLeft } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";

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
    ...(scarce.length === 0 ? [] : [tooLittleLeft(scarce)]),
    columns(
      posterior.toSorted((a, b) => b.mean - a.mean),
      [
        { head: "Tried", cell: ({ id }) => id },
        { head: "Log worth", cell: ({ mean, sd }) => `${mean.toFixed(2)} ± ${sd.toFixed(2)}`, right: true },
        { head: "Best of them", cell: ({ pBest }) => `${(100 * pBest).toFixed(0)} %`, right: true },
      ],
      "Nothing has been tried yet.",
    ),
    restsOn(counted),
    ...(ownShare === 0
      ? []
      : [`Tasters differ: ${(100 * ownShare).toFixed(0)} % of what one likes is taken to be their own.`]),
    `${stop.advised ? "Another flight is hardly worth it" : "Another flight is worth it"}. ${stop.why}`,
  ].join("\n\n");
}
