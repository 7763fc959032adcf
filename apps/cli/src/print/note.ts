import type { AnswerOf } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";

type Read = AnswerOf<"readNote">;

const figure = (value: number): string => value.toFixed(1);

/** Observations in the order of the note, then the profile: 0 to 10, give or take one standard deviation. */
export function printRead({ observations, profile }: Read, note: string): string {
  const seen = columns(
    observations,
    [
      { head: "Said", cell: ({ quote }) => note.slice(...quote).replace(/\s+/g, " ") },
      { head: "Attribute", cell: ({ attribute }) => attribute },
      { head: "Where", cell: ({ where }) => where },
      { head: "0 to 10", cell: ({ strength }) => figure(strength), right: true },
      { head: "Stance", cell: ({ stance }) => stance },
    ],
    "Nothing of the vocabulary in it.",
  );
  if (observations.length === 0) return seen;
  const made = columns(
    Object.entries(profile).toSorted(([, a], [, b]) => b.mean - a.mean),
    [
      { head: "Profile", cell: ([attribute]) => attribute },
      { head: "Mean", cell: ([, { mean }]) => figure(mean), right: true },
      { head: "± sd", cell: ([, { sd }]) => figure(sd), right: true },
    ],
    "",
  );
  return `${seen}\n\n${made}`;
}
