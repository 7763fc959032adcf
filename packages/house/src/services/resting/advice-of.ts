import { DAY_MS } from "@partsproof/core/quantity";
import type { NoteReader } from "@partsproof/core/notes";
import { MOST_PIECES } from "@partsproof/core/rest";
import { attributeName } from "@partsproof/core/sensory";
import type { BodyRead, RestAdvice, RestAnswer } from "../../protocol/index.ts";
import { restOf } from "../oak/index.ts";
import { checkLevels } from "./check-levels.ts";
import { areaPerLitreOf, kindsOf, thicknessOf, woodIn } from "./dose-of-rest.ts";
import { dayOf, startOf, type WholeRest } from "./shown-rest.ts";

const MM = 10;
/** Besides the rule's attribute, so many that were tasted most often: each takes the model some 60 ms. */
const OTHERS = 4;
/** Nobody plans to pull later. */
const HALF_A_YEAR = 180;
const REACH = { least: 20, most: 80 };

/** How much of a rest is wanted: the rule's attribute alone, or the others tasted as well. */
export type Depth = "rule" | "all";

/**
 * O5: what to believe of a rest now, from the household's own check tastings. Tastings are planned as of the last one, so that a
 * planned day can come and be due.
 */
export function adviceOf(whole: WholeRest, read: NoteReader, now: Date, depth: Depth): RestAdvice {
  const { rest, pieces } = whole;
  const empty = { restId: rest.id, answer: null, attributeIds: [], tasteNow: false, nextTastings: [] };
  const dates = { readyFrom: null, readyTo: null, leadsFrom: null };
  const why = whyNot(whole);
  if (why !== null || rest.pull === null)
    return { ...empty, ...dates, why, remarks: rest.kind === "glass" ? [GLASS] : [] };
  const start = startOf(whole);
  const tastings = whole.checks.map(({ at, notes, strengths }) => ({
    day: dayOf(start, at),
    levels: checkLevels({ notes, strengths }, read),
  }));
  const last = Math.max(0, ...tastings.map(({ day }) => day));
  const today = Math.max(last, Math.floor(dayOf(start, rest.endedAt ?? now.toISOString())));
  const ids = attributesOf(rest.pull.attribute, tastings, depth);
  const answer = reckoned(
    {
      pull: { attribute: attributeName(rest.pull.attribute), level: rest.pull.level },
      ...(rest.leadsAt === null ? {} : { leadsAt: rest.leadsAt }),
      oak: oakOf(whole, start),
      ...(rest.abv20 === null ? {} : { abv20: rest.abv20 }),
      ...(rest.celsius === null ? {} : { celsius: rest.celsius }),
      falling: rest.falling.map(attributeName),
      today,
      tastings: tastings.map(({ day, levels }) => ({
        day,
        levels: Object.fromEntries(
          ids.flatMap((id) => {
            const level = levels[id];
            return level === undefined ? [] : [[attributeName(id), level]];
          }),
        ),
      })),
    },
    last,
  );
  const instant = (day: number | null): string | null =>
    day === null ? null : new Date(Date.parse(start) + day * DAY_MS).toISOString();
  const { ready, leadsFrom, nextTastings } = answer;
  const [next] = nextTastings;
  return {
    restId: rest.id,
    answer,
    why: null,
    attributeIds: ids,
    tasteNow: rest.endedAt === null && (next === undefined ? answer.readyToday >= 0.5 : next.day <= today),
    nextTastings: nextTastings.map((one) => ({ ...one, at: instant(one.day) ?? start })),
    readyFrom: instant(ready.high === null ? (ready.ifEver?.low ?? null) : ready.low),
    readyTo: instant(ready.high ?? ready.ifEver?.high ?? null),
    leadsFrom: leadsFrom !== null && leadsFrom <= HALF_A_YEAR ? instant(leadsFrom) : null,
    remarks: kindsOf(pieces) > 1 ? [APART] : [],
  };
}

const GLASS =
  "A rest in glass is mostly mixing and air. Two weeks are common practice, no source; whether it helps is for a blind flight to say.";

const APART =
  "Each piece counts by its own contact, thickness, use and days in; what they give adds up in the liquid. That none slows another, and that what a piece has soaked up leaves with it, is left out.";

function whyNot({ rest, pieces }: WholeRest): string | null {
  if (rest.kind === "glass") return "On glass nothing is drawn from wood, so there is no day to reckon.";
  if (pieces.length === 0) return "No wood has gone in yet.";
  if (woodIn(rest, pieces).length === 0 && rest.endedAt === null)
    return "All of its wood is out, and nothing more is drawn: put more in, or end the rest.";
  if (kindsOf(pieces) > MOST_PIECES)
    return `At most ${MOST_PIECES} pieces with days of their own are reckoned, and this rest has ${kindsOf(pieces)}.`;
  if (rest.pull === null) return "No rule says yet when to pull.";
  if (rest.abv20 !== null && (rest.abv20 < REACH.least || rest.abv20 > REACH.most))
    return `What is believed is for ${REACH.least} to ${REACH.most} % vol, and this is ${rest.abv20.toFixed(1)} %.`;
  return null;
}

/** The rule's, then those tasted most often. */
function attributesOf(
  rule: string,
  tastings: readonly { readonly levels: Readonly<Record<string, number>> }[],
  depth: Depth,
): string[] {
  if (depth === "rule") return [rule];
  const counts = new Map<string, number>();
  for (const { levels } of tastings)
    for (const id of Object.keys(levels)) counts.set(id, (counts.get(id) ?? 0) + 1);
  counts.delete(rule);
  const most = [...counts].toSorted(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).slice(0, OTHERS);
  return [rule, ...most.map(([id]) => id)];
}

/** Each piece by itself; what came out as the rest ended counts as in, as it was believed then. */
function oakOf({ rest, pieces }: WholeRest, start: string): NonNullable<BodyRead<"rest">["oak"]> {
  return {
    pieces: pieces.map((one) => {
      const thickness = thicknessOf(one);
      return {
        areaPerLitre: areaPerLitreOf([one]),
        ...(thickness === null ? {} : { thicknessMm: thickness * MM }),
        use: one.use,
        inDay: dayOf(start, one.inAt),
        ...(one.outAt === null || one.outAt === rest.endedAt ? {} : { outDay: dayOf(start, one.outAt) }),
      };
    }),
  };
}

/** The model gives the same for the same, and takes long: what was reckoned last is kept, by all that it rests on. */
const kept = new Map<string, RestAnswer>();
const MOST_KEPT = 200;

function reckoned(body: BodyRead<"rest">, plannedOn: number): RestAnswer {
  const key = JSON.stringify([body, plannedOn]);
  const answer = kept.get(key) ?? restOf(body, plannedOn);
  kept.delete(key);
  kept.set(key, answer);
  if (kept.size > MOST_KEPT) for (const oldest of [...kept.keys()].slice(0, 1)) kept.delete(oldest);
  return answer;
}
