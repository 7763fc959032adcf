import type { KeptUp, NextAddition } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";
import { abv, day, ml, percent } from "./figures.ts";

export function printKeptUp(told: KeptUp): string {
  const last = told.course.at(-1);
  const years = told.now.youngestAge.years;
  return [
    facts([
      ["Vessel", told.label],
      ["Holds", `${ml(told.now.volumeMl)} of ${ml(told.capacityMl)}, ${abv(told.now.abv20)}`],
      [
        "Made of",
        told.liquids
          .map(({ label }, i) => `${percent(last?.parts[i] ?? 0)} of the mass ${label}`)
          .join("\n") || null,
      ],
      [
        "Youngest age",
        years === null ? told.now.youngestAge.why : `${years} years, ${told.now.youngestAge.why}`,
      ],
      ["Poured", `${told.pours} pours, ${ml(told.pouredMl)} in all`],
    ]),
    columns(
      told.additions.toReversed(),
      [
        { head: "Added", cell: ({ at }) => day(at) },
        { head: "Amount", cell: (one) => ml(one.ml), right: true },
        { head: "From", cell: ({ from }) => from },
        { head: "Left", cell: ({ left }) => percent(left), right: true },
        {
          head: "Half gone after",
          cell: ({ halfLifeDays }) => (halfLifeDays === null ? "-" : `${halfLifeDays.toFixed(1)} days`),
          right: true,
        },
      ],
      "Nothing was ever in it.",
    ),
  ].join("\n\n");
}

const few = (x: number): string => x.toFixed(2);

export function printNextAddition(next: NextAddition): string {
  const { recipes, before, addMl, unknown, withoutProfile } = next;
  return [
    columns(
      recipes,
      [
        {
          head: "Add",
          cell: ({ parts }) => parts.map((one) => `${ml(one.ml)} ${one.label}`).join(" + "),
        },
        { head: "Off then", cell: ({ distance }) => few(distance), right: true },
        { head: "Strength", cell: ({ after }) => abv(after.abv20), right: true },
        { head: "Holds", cell: ({ after }) => ml(after.volumeMl), right: true },
      ],
      next.conflict.length === 0
        ? `Nothing on the shelf is enough for ${ml(addMl)}.`
        : `Nothing keeps these rules together: ${next.conflict.join(", ")}.`,
    ),
    facts([
      ["Off now", before === null ? "it is empty" : few(before)],
      ["Counted", next.attributes.join(", ")],
      ["Not counted", unknown.length === 0 ? null : unknown.join(", ")],
      ["Left out", withoutProfile.length === 0 ? null : withoutProfile.map(({ label }) => label).join(", ")],
      [
        "Told apart",
        next.cannotTellApart > 1
          ? `the first ${next.cannotTellApart} cannot be told apart on what is known`
          : null,
      ],
    ]),
  ].join("\n\n");
}
