import { toMix } from "@partsproof/core/learning";
import type { z } from "zod";
import type { TrialFlight, TrialSetDraft } from "./trial.ts";
import type { TriedHistory } from "./tried-history.ts";

interface PlannedGlass {
  readonly parts: Readonly<Record<string, number>>;
  readonly kind: TrialFlight["glasses"][number]["kind"];
  /** May name whiskeys by id. */
  readonly why: string;
}

/** Of each mix for everybody who ranked so far: two small pours. Common practice, no source. */
const EACH_ML = 30;
const MOST_ML = 200;
const ANY_ID = /[0-9a-z]{26}/g;

/**
 * A proposed flight as `addTrialSet` takes it: what is to be mixed, what stands ready beside it, and why each glass is there. Without
 * mixes where every glass stands ready.
 */
export function plannedTrials(
  { asked: { target }, names, vessels, counted }: TriedHistory,
  recipe: string,
  glasses: readonly PlannedGlass[],
): z.input<typeof TrialSetDraft> {
  const {
    whiskeys,
    mixes,
    glasses: of,
  } = toMix(
    glasses.map(({ parts }) => parts),
    vessels,
  );
  const close = target !== undefined && glasses.some(({ kind }) => kind === "target");
  return {
    name: `${recipe.slice(0, 100)}: next flight`,
    parts: whiskeys.map((whiskeyId) => ({ of: { kind: "whiskey", whiskeyId } })),
    plan: "own",
    mixes: mixes.map((mix) => [...mix]),
    volumeMl: Math.min(MOST_ML, EACH_ML * Math.max(1, counted.tasters)),
    mostMl: MOST_ML,
    flight: {
      question: close ? "how_close" : "like_best",
      ...(close ? { targetNameId: target } : {}),
      glasses: glasses.map(({ kind, why }, i) => ({
        of: of[i] ?? { trial: 1 },
        kind,
        why: why.replace(ANY_ID, (id) => names[id] ?? id).slice(0, 500),
      })),
    },
  };
}
