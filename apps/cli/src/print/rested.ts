import { attributeName } from "@partsproof/core/sensory";
import type { Rest, RestAdvice } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";
import { day } from "./figures.ts";
import { printRest } from "./rest.ts";

/** A rest as it stands, and what to believe of it where that was asked. */
export const printRested = (rest: Rest, advice: RestAdvice | null): string =>
  [
    printFacts(rest),
    rest.checks.length === 0 ? "" : printChecks(rest),
    advice === null ? rest.cautions.join("\n") : printAdviceWords(advice, rest),
  ]
    .filter((part) => part !== "")
    .join("\n\n");

/** After a tasting: what was read, and what to believe now. */
export const printAdvice = (rest: Rest, advice: RestAdvice): string =>
  [printChecks(rest), printAdviceWords(advice, rest)].join("\n\n");

function printFacts(rest: Rest): string {
  const { dose, pull, sample } = rest;
  return facts([
    ["Rest", `${rest.batchName}, on ${rest.kind}`],
    ["Since", day(rest.beganAt)],
    [
      "Wood in",
      rest.oakInAt === null ? (rest.kind === "oak" ? "not yet: rest oak" : null) : woodIn(rest, rest.oakInAt),
    ],
    ["Wood", rest.oak.length === 0 ? null : rest.oak.map(woodLine(rest)).join("\n")],
    [
      "Dose",
      dose === null
        ? null
        : `${dose.areaPerLitre.toFixed(0)} cm² a litre, ${dose.caskRatio.toFixed(2)} of a 200 L cask (${dose.caskRatioLow.toFixed(2)} to ${dose.caskRatioHigh.toFixed(2)})`,
    ],
    ["Rule", pull === null ? null : `pull when ${attributeName(pull.attribute)} reaches ${pull.level} of 10`],
    ["At", rest.celsius === null ? null : `${rest.celsius} °C`],
    [
      "Shortest rest",
      (rest.minimumDays ?? 0) === 0 || rest.minimumEndsAt === null
        ? null
        : `${rest.minimumDays} days, until ${day(rest.minimumEndsAt)}`,
    ],
    ["Kept from before", sample === null ? null : `${sample.ml.toFixed(0)} mL in ${sample.label}`],
    ["Flight", rest.flightOn === null ? null : `before and after, ${rest.flightOn}`],
    [
      "Ended",
      rest.endedAt === null
        ? null
        : `${day(rest.endedAt)}, ${(rest.lossMl ?? 0).toFixed(0)} mL lost in filtering`,
    ],
    ["Note", rest.note === "" ? null : rest.note],
  ]);
}

/** Since when, and whether all of it is out while the rest goes on. */
const woodIn = ({ oak, endedAt }: Rest, since: string): string =>
  endedAt === null && oak.every(({ outAt }) => outAt !== null)
    ? `${day(since)}, all of it out by ${day(
        oak
          .map(({ outAt }) => outAt ?? since)
          .toSorted()
          .at(-1) ?? since,
      )}`
    : day(since);

/** Numbered where there are several, as `rest out` takes them; with its days where they are not the rest's. */
const woodLine =
  (rest: Rest) =>
  (piece: Rest["oak"][number], n: number): string =>
    [rest.oak.length > 1 ? `${n + 1}. ` : "", woodWords(piece), daysIn(rest, piece)].join("");

function daysIn({ oakInAt, endedAt }: Rest, { inAt, outAt }: Rest["oak"][number]): string {
  if (outAt !== null && outAt !== endedAt) return `; in ${day(inAt)}, out ${day(outAt)}`;
  return inAt === oakInAt ? "" : `; in ${day(inAt)}`;
}

function woodWords({ piece, count, areaCm2, grams, species, toast, use }: Rest["oak"][number]): string {
  const what =
    piece === null
      ? "wood"
      : piece.shape === "chips"
        ? "chips"
        : `${count} ${piece.shape}${count === 1 ? "" : "s"}`;
  const more = [
    `${areaCm2.toFixed(0)} cm²`,
    grams === null ? "" : `${grams.toFixed(1)} g`,
    species,
    toast,
    use === 1 ? "new" : `used before, use ${use}`,
  ];
  return `${what}: ${more.filter((part) => part !== "").join(", ")}`;
}

const printChecks = (rest: Rest): string =>
  columns(
    rest.checks,
    [
      { head: "Day", cell: (check) => check.day.toFixed(0), right: true },
      { head: "Date", cell: ({ at }) => day(at) },
      { head: "Taster", cell: ({ taster }) => taster ?? "" },
      {
        head: "Read, 0 to 10",
        cell: ({ levels }) =>
          Object.entries(levels)
            .map(([id, level]) => `${attributeName(id)} ${level.toFixed(1)}`)
            .join(", "),
      },
    ],
    "Nothing was tasted yet.",
  );

function printAdviceWords(advice: RestAdvice, rest: Rest): string {
  if (advice.answer === null)
    return [advice.why ?? "", ...advice.remarks, ...rest.cautions].filter((part) => part !== "").join("\n");
  return [printRest(advice.answer), ...advice.remarks].join("\n\n");
}
