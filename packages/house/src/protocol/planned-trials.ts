import { toMix } from "@partsproof/core/learning";
import type { z } from "zod";
import { MEASURED, MOST_MIX_ML, poursFor } from "./flight-pours.ts";
import type { TrialFlight, TrialSetDraft } from "./trial.ts";
import type { TriedHistory } from "./tried-history.ts";

interface PlannedGlass {
  readonly parts: Readonly<Record<string, number>>;
  readonly kind: TrialFlight["glasses"][number]["kind"];
  /** May name whiskeys by id. */
  readonly why: string;
}

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
  const { mixMl, pourMl } = poursFor(counted.tasters);
  return {
    name: `${recipe.slice(0, 100)}: next flight`,
    parts: whiskeys.map((whiskeyId) => ({ of: { kind: "whiskey", whiskeyId } })),
    plan: "own",
    mixes: mixes.map((mix) => [...mix]),
    volumeMl: mixMl,
    mostMl: MOST_MIX_ML,
    ...MEASURED,
    flight: {
      question: close ? "how_close" : "like_best",
      ...(close ? { targetNameId: target } : {}),
      pourMl,
      glasses: glasses.map(({ kind, why }, i) => ({
        of: of[i] ?? { trial: 1 },
        kind,
        why: why.replace(ANY_ID, (id) => names[id] ?? id).slice(0, 500),
      })),
    },
  };
}
