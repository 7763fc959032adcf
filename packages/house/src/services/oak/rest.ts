import { CASK, OAK_CAUTIONS } from "@partsproof/core/oak";
import {
  type Course,
  openRest,
  REFERENCE,
  type RestBelief,
  type Window,
  type WoodIn,
} from "@partsproof/core/rest";
import type { BodyRead, RestAnswer } from "../../protocol/index.ts";
import { restSentences } from "./rest-words.ts";

type Body = BodyRead<"rest">;

/** The oak leads where its attribute stands so much above the pull level: the house's own word for it. */
const LEADS_ABOVE = 1.5;
const MM = 10;
/** Days on which levels are told. */
const TOLD_DAYS = [0, 1, 2, 3, 5, 7, 10, 14, 21, 28, 42, 60, 90, 120, 180];

const METHOD =
  "Bayes by importance sampling, attribute by attribute; the same every time. Tried on simulated households: docs/guide/rest.md.";
const REST_NOT_KNOWN =
  "Nobody has published constants for small pieces of oak in spirit. What is believed beforehand is wide, partly from memory and partly taken without a source; your tastings decide.";

/** @param plannedOn the day as of which the next tastings are planned; today where left out */
export function restOf(body: Body, plannedOn?: number): RestAnswer {
  const { pull, tastings = [], falling = [], form = "two-stage" } = body;
  const leadsAt = body.leadsAt ?? pull.level + LEADS_ABOVE;
  const today = body.today ?? Math.max(0, ...tastings.map(({ day }) => day));
  const names = [...new Set([pull.attribute, ...tastings.flatMap(({ levels }) => Object.keys(levels))])];
  const pieces = body.oak?.pieces;
  const beliefs = names.map((attribute) => {
    const course: Course = falling.includes(attribute) ? "rises-and-falls" : "rises";
    const own = tastings.flatMap(({ day, levels }) =>
      Object.hasOwn(levels, attribute) ? [{ day, level: levels[attribute] as number }] : [],
    );
    const rest = openRest({
      conditions: conditionsOf(body),
      ...(pieces === undefined ? {} : { pieces: pieces.map(woodInOf) }),
      course,
      form,
      pullAt: pull.level,
      leadsAt,
    });
    const from = Math.min(plannedOn ?? today, today);
    return {
      attribute,
      course,
      tastings: own.length,
      belief: rest(own, today),
      planned: from === today ? null : rest(own, from),
    };
  });
  // The rule's attribute stands first.
  const { belief, planned } = beliefs[0] as (typeof beliefs)[number];
  const told = {
    pull,
    leadsAt,
    today,
    ready: windowOf(belief.ready),
    readyToday: belief.readyToday,
    leads: windowOf(belief.leads),
    leadsFrom: belief.leadsFrom,
    leadsToday: belief.leadsToday,
    nextTastings: (planned ?? belief).nextTastings().map(({ day, tells }) => ({ day, tells })),
  };
  return {
    ...told,
    attributes: beliefs.map(({ attribute, course, tastings: count, belief: one }) => ({
      attribute,
      course,
      tastings: count,
      levels: levelsOf(one),
      effective: one.effective,
    })),
    sentences: restSentences(told),
    method: METHOD,
    notKnown: REST_NOT_KNOWN,
    cautions: [...OAK_CAUTIONS],
  };
}

type Wood = Pick<NonNullable<Body["oak"]>, "areaPerLitre" | "thicknessMm" | "use">;

const woodOf = ({ areaPerLitre, thicknessMm, use }: Wood) => ({
  caskRatio: areaPerLitre === undefined ? REFERENCE.caskRatio : areaPerLitre / CASK.likely,
  thicknessCm: thicknessMm === undefined ? REFERENCE.thicknessCm : thicknessMm / MM,
  use: use ?? REFERENCE.use,
});
const woodInOf = (
  piece: Wood & { readonly inDay?: number | undefined; readonly outDay?: number | undefined },
): WoodIn => ({ ...woodOf(piece), inDay: piece.inDay ?? 0, outDay: piece.outDay ?? null });

const conditionsOf = ({ oak, abv20, celsius }: Body) => ({
  ...woodOf(oak ?? {}),
  abv20: abv20 ?? REFERENCE.abv20,
  celsius: celsius ?? REFERENCE.celsius,
});

/** JSON has no infinity: what never comes is null. */
const windowOf = ({ low, high, level, middle, ifEver, never }: Window): RestAnswer["ready"] => ({
  low: Number.isFinite(low) ? low : null,
  high,
  level,
  middle,
  ifEver,
  never,
});

const levelsOf = (belief: RestBelief): RestAnswer["attributes"][number]["levels"] =>
  TOLD_DAYS.map((day) => {
    const { low, middle, high } = belief.levelOn(day);
    return { day, low, middle, high };
  });
