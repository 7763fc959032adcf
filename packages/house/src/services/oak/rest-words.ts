import type { RestAnswer } from "../../protocol/index.ts";

type Told = Pick<
  RestAnswer,
  "pull" | "today" | "ready" | "readyToday" | "leads" | "leadsFrom" | "leadsToday" | "nextTastings"
>;

/** A chance in words no more exact than it is: to the nearest one in twenty. */
function chance(p: number): string {
  if (p < 0.025) return "next to no chance";
  if (p > 0.975) return "next to certain";
  return `about ${5 * Math.round(20 * p)} in 100`;
}
const dayOf = (day: number): string => `day ${Math.round(day)}`;
/** Beyond so many days nobody has tasted, and no day is named. */
const HALF_A_YEAR = 180;

/** What to do, in the order one asks: taste when, ready when, and from when on the oak leads. */
export function restSentences(told: Told): string[] {
  const { pull, today, ready, readyToday, leadsFrom, leadsToday, nextTastings } = told;
  const [next] = nextTastings;
  const said: string[] = [];
  if (next !== undefined && next.day <= today)
    said.push(`Taste now: day ${next.day} was planned for it, and this is ${dayOf(today)}.`);
  else if (next !== undefined) said.push(`Taste again on day ${next.day}.`);
  else
    said.push(
      `It is as likely as not there already (${chance(readyToday)}): taste today, and pull if you agree.`,
    );
  said.push(readySentence(told));
  if (ready.never >= 0.025)
    said.push(`That ${pull.attribute} never reaches ${pull.level} with this wood: ${chance(ready.never)}.`);
  said.push(
    leadsFrom === null || leadsFrom > HALF_A_YEAR
      ? "As likely as not the oak does not lead within half a year."
      : leadsToday >= 0.5
        ? "As likely as not the oak leads already."
        : `Past ${dayOf(leadsFrom)} the oak leads, as likely as not.`,
  );
  return said;
}

function readySentence({ pull, ready }: Told): string {
  const what = `${pull.attribute} reaches ${pull.level} of 10`;
  const { low, high, ifEver } = ready;
  if (low !== null && high !== null)
    return `Likely ready (${what}) between ${dayOf(low)} and ${dayOf(high)}: 80 % of what is believed.`;
  if (ifEver === null) return `With this wood it hardly ever happens that ${what}.`;
  return `If it ever gets there (${what}), likely between ${dayOf(ifEver.low)} and ${dayOf(ifEver.high)}: 80 % of what is believed then.`;
}
