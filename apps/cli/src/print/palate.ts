import { attributeName } from "@partsproof/core/sensory";
import type { LearnedLevel, LearnedProfile, PalateBoard, TaughtByNote } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";

type Taster = PalateBoard["tasters"][number];

const reach = ({ mean, low, high }: LearnedLevel["learned"]): string =>
  `${mean.toFixed(1)} (${low.toFixed(1)} to ${high.toFixed(1)})`;

const offBy = ({ before, after }: TaughtByNote["off"]): string =>
  `off by ${before.toFixed(1)} now and ${after.toFixed(1)} after a note`;

/** What a whiskey tastes of, learned, beside its label alone and the plain mean of its notes: 0 to 10, intervals of 95 of 100. */
export const printLearned = ({ headline, levels, next, method }: LearnedProfile): string =>
  [
    headline,
    ...(levels.length === 0
      ? []
      : [
          columns<LearnedLevel>(
            levels,
            [
              { head: "Attribute", cell: ({ attribute }) => attributeName(attribute) },
              { head: "Learned", cell: ({ learned }) => reach(learned), right: true },
              { head: "Label alone", cell: ({ label }) => reach(label), right: true },
              { head: "Mean of notes", cell: ({ raw }) => raw?.mean.toFixed(1) ?? "", right: true },
              { head: "Notes", cell: ({ raw }) => String(raw?.notes ?? 0), right: true },
              { head: "Of mixes", cell: ({ inMixes }) => String(inMixes), right: true },
            ],
            "",
          ),
        ]),
    ...(next === null ? [] : [`The next note of it, ${offBy(next.off)}: ${next.why}`]),
    `Method: ${method}.`,
  ].join("\n\n");

/** So many glasses are told with their reason. */
const TOLD = 5;

/** What to taste next to learn most, with the reasons; how each uses the scale. */
export const printPalate = ({ headline, next, tasters, mixing, silent, method }: PalateBoard): string =>
  [
    headline,
    ...next.slice(0, TOLD).map(({ label, off, why }, i) => `${i + 1}. ${label}, ${offBy(off)}\n   ${why}`),
    ...(next.length > TOLD ? [`${next.length - TOLD} more teach less.`] : []),
    ...(tasters.length === 0
      ? []
      : [
          columns<Taster>(
            tasters,
            [
              { head: "Who", cell: ({ taster }) => taster },
              { head: "Says more by", cell: ({ offset }) => offset.toFixed(1), right: true },
              { head: "Stretch", cell: ({ stretch }) => stretch.toFixed(2), right: true },
              { head: "Off by", cell: ({ noise }) => noise.toFixed(1), right: true },
            ],
            "",
          ),
          `A mix of half and half is off the mean of its parts by about ${mixing.toFixed(1)}.`,
        ]),
    ...(silent.length === 0
      ? []
      : [`Not looked at: ${silent.map(({ label, why }) => `${label} (${why})`).join("; ")}.`]),
    `Method: ${method}.`,
  ].join("\n\n");
