import {
  lackInWords,
  type NextFlightAnswer,
  type NextFlightDraft,
  restsOn,
  tooLittleLeft,
} from "@partsproof/house/protocol";
import { columns } from "./columns.ts";

const parts = (by: NextFlightAnswer["glasses"][number]["parts"]): string =>
  Object.entries(by)
    .map(([id, count]) => `${count} ${id}`)
    .join(", ");

type Instead = NonNullable<NextFlightDraft["instead"]>;

/** A glass as it was proposed, or what was decided in its place. */
function line(
  { parts: proposed, why }: NextFlightAnswer["glasses"][number],
  n: number,
  instead: Instead,
): string {
  const own = instead.find(({ glass }) => glass === n + 1);
  if (own === undefined) return `${n + 1}. ${parts(proposed)}\n   ${why}`;
  return own.parts === null
    ? `${n + 1}. left out: ${parts(proposed)}`
    : `${n + 1}. ${parts(own.parts)}\n   Your own, in the place of ${parts(proposed)}.`;
}

export function printNextFlight(
  { glasses, posterior, stop, ownShare, scarce, lacks, counted }: NextFlightAnswer,
  instead: Instead = [],
): string {
  return [
    glasses.map((glass, n) => line(glass, n, instead)).join("\n"),
    ...(lacks.length === 0 ? [] : [lacks.map((lack) => lackInWords(lack, (id) => id)).join("\n")]),
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
