import { attributeName } from "@partsproof/core/sensory";
import type { LearnedMixing, MixingBoard } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";

type Blend = LearnedMixing["blends"][number];

const LAW = { power: "Power law", strongest: "Strongest part" } as const;

/** What mixing does: a sentence an attribute, and for what does not follow the mean the mixes that say so. */
export function printMixing({ headline, attributes, silent, method }: MixingBoard): string {
  const kept = attributes.filter(({ law }) => law === "mean");
  return [
    headline,
    ...attributes.flatMap((one) => (one.law === "mean" ? [] : [printLaw(one, one.law)])),
    ...(kept.length === 0 ? [] : [kept.map(({ sentence }) => sentence).join("\n")]),
    ...(silent.length === 0
      ? []
      : [`Not looked at: ${silent.map(({ label, why }) => `${label} (${why})`).join("; ")}.`]),
    `Method: ${method}.`,
  ].join("\n\n");
}

const printLaw = ({ attribute, blends }: LearnedMixing, law: "power" | "strongest"): string =>
  columns<Blend>(
    blends,
    [
      { head: `Blend, ${attributeName(attribute)}`, cell: ({ label }) => label },
      {
        head: "Noted",
        cell: ({ noted }) => `${noted.mean.toFixed(1)} ± ${noted.sd.toFixed(1)}`,
        right: true,
      },
      { head: "Mean", cell: ({ foretold }) => foretold.mean.toFixed(1), right: true },
      { head: LAW[law], cell: ({ foretold }) => foretold[law].toFixed(1), right: true },
    ],
    "",
  );
