import type { RestAnswer } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;
const day = (value: number | null, none = "never"): string => (value === null ? none : value.toFixed(0));

type Span = RestAnswer["ready"];
const span = ({ low, high, middle, never }: Span): string =>
  `day ${day(low)} to ${day(high)}, the middle ${day(middle)} where it comes; never: ${percent(never)}`;

export function printRest(answer: RestAnswer): string {
  const shown = [0, 3, 7, 14, 28, 60];
  return [
    answer.sentences.join("\n"),
    facts([
      [`${answer.pull.attribute} at ${answer.pull.level}`, span(answer.ready)],
      [`Oak leads at ${answer.leadsAt}`, span(answer.leads)],
      [
        `Today, day ${answer.today}`,
        `ready ${percent(answer.readyToday)}, oak leads ${percent(answer.leadsToday)}`,
      ],
      [
        "Tell most",
        answer.nextTastings.length === 0
          ? null
          : answer.nextTastings.map(({ day: on, tells }) => `day ${on} (${percent(tells)})`).join(", "),
      ],
    ]),
    columns(
      answer.attributes,
      [
        { head: "Attribute", cell: ({ attribute }) => attribute },
        { head: "Tasted", cell: ({ tastings }) => String(tastings), right: true },
        ...shown.map((on) => ({
          head: `Day ${on}`,
          cell: ({ levels }: RestAnswer["attributes"][number]) => {
            const level = levels.find((one) => one.day === on);
            return level === undefined
              ? "-"
              : `${level.middle.toFixed(1)} (${level.low.toFixed(1)} to ${level.high.toFixed(1)})`;
          },
        })),
      ],
      "",
    ),
    [answer.notKnown, answer.method].join("\n"),
    answer.cautions.join("\n"),
  ].join("\n\n");
}
