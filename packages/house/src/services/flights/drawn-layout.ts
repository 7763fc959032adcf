import {
  blockPlan,
  discriminationSets,
  drawCodes,
  flightGlasses,
  lateWeights,
  servingPlan,
} from "@partsproof/core/sensory";
import { type Rng, shuffled } from "@partsproof/core/statistics";
import { REFERENCE_LABEL } from "../../protocol/index.ts";
import { burdenOf } from "./burden.ts";
import type { SealedKey } from "./flight-key.ts";
import type { Draft } from "./pours.ts";
import { asksOf, inSets } from "./question.ts";
import { nameOf, type Shelf } from "../shelf/index.ts";

type Glass = SealedKey["glasses"][number];

export interface Layout {
  readonly key: SealedKey;
  /** The coded glasses of each sheet in the order to taste. */
  readonly orders: readonly (readonly string[])[];
  /** What is balanced and what is not, as far as it says nothing of what is in which glass. */
  readonly said: readonly string[];
}

/** A glass as it stands on a sheet: its number, its set, and whether it is the one that is known. */
interface Stood {
  readonly glass: number;
  readonly set?: number;
  readonly known?: true;
}
interface Rows {
  /** One row a sheet. */
  readonly rows: readonly (readonly Stood[])[];
  readonly said: readonly string[];
  /** What only the key may say before the reveal. */
  readonly saidAfter?: readonly string[];
}

/** In a drawn order, so that neither a glass number nor a mark tells how the host listed them. */
export const drawnGlasses = (draft: Draft, shelf: Shelf, chance: Rng): readonly Glass[] =>
  shuffled(draft.glasses, chance).map(({ vesselId }) => glassOf(shelf, vesselId));

const glassOf = (shelf: Shelf, vesselId: string): Glass => ({
  vesselId,
  nameId: nameOf(shelf, vesselId).nameId,
});

/** F2, Q2 to Q6: what stands where on every sheet, with fresh codes; in the same number of draws whatever is in the glasses. */
export function drawnLayout(
  draft: Draft,
  shelf: Shelf,
  listed: readonly Glass[],
  sheetIds: readonly string[],
  chance: Rng,
): Layout {
  const glasses = withMore(draft, shelf, listed, chance);
  const { rows, said, saidAfter } = rowsOf(draft, shelf, glasses, sheetIds.length, chance);
  const coded = rows.map((row) => row.filter(({ known }) => !known));
  const drawn = drawCodes(coded.flat().length, chance);
  const orders = coded.map((row) => drawn.splice(0, row.length));
  const codes = rows.flatMap((row, i) => {
    const left = [...(orders[i] ?? [])];
    return row.map(({ glass, set, known }) => ({
      sheetId: sheetIds[i] ?? "",
      code: known ? REFERENCE_LABEL : (left.shift() ?? ""),
      glass,
      ...(set === undefined ? {} : { set }),
    }));
  });
  const expected = glasses.findIndex(({ vesselId }) => vesselId === draft.expectedVesselId);
  const key: SealedKey = {
    glasses,
    codes,
    ...(draft.expectedVesselId === null ? {} : { expected }),
    ...(saidAfter === undefined ? {} : { said: saidAfter }),
  };
  return { key, orders, said };
}

/** Q6: the glasses with the repeats that are drawn and the control. */
function withMore(draft: Draft, shelf: Shelf, listed: readonly Glass[], rng: Rng): readonly Glass[] {
  const { repeats, controlVesselId } = draft;
  if (repeats === 0 && controlVesselId === null) return listed;
  const control = controlVesselId === null ? null : glassOf(shelf, controlVesselId);
  const drawn = flightGlasses({ whiskeys: listed.length, repeats, control: control !== null, rng });
  return drawn.glasses.flatMap(({ whiskey }) => listed[whiskey] ?? control ?? []);
}

function rowsOf(draft: Draft, shelf: Shelf, glasses: readonly Glass[], tasters: number, rng: Rng): Rows {
  const { question, method, sets, glassesEach } = draft;
  if (inSets(question) && method !== null) {
    const { orders, said } = discriminationSets(method, tasters * sets, rng);
    const known = method === "duo_trio";
    const dealt = orders.map((order, i) =>
      order.split("").map(
        (letter, place): Stood => ({
          glass: letter === "A" ? 0 : 1,
          set: 1 + (i % sets),
          ...(known && place === 0 ? { known: true } : {}),
        }),
      ),
    );
    return { rows: chunked(dealt, sets).map((own) => own.flat()), said };
  }
  if (glassesEach !== null) {
    const plan = blockPlan({ whiskeys: glasses.length, glasses: glassesEach, servings: tasters, rng });
    return { rows: plan.orders.map((order) => order.map((glass) => ({ glass }))), said: plan.said };
  }
  const rounds = question === "agree_with_myself" ? 2 : 1;
  const plan = servingPlan({
    glasses: glasses.length,
    tasters: tasters * rounds,
    rng,
    ...(draft.late ? { late: lateWeights(glasses.map(({ vesselId }) => burdenOf(shelf, vesselId))) } : {}),
    // Where names are guessed, a rule that keeps two of a name apart would help the guessing.
    apart: asksOf(question).guesses ? [] : twinsOf(glasses),
  });
  const target = glasses.findIndex(({ nameId }) => nameId === draft.targetNameId);
  const reference: readonly Stood[] = draft.reference ? [{ glass: target, known: true }] : [];
  const served = plan.orders.map((order, i) =>
    order.map((glass): Stood => (rounds === 1 ? { glass } : { glass, set: 1 + (i % rounds) })),
  );
  return {
    rows: chunked(served, rounds).map((own) => [...reference, ...own.flat()]),
    said: plan.saidBlind,
    saidAfter: plan.said.slice(plan.saidBlind.length),
  };
}

/** Pairs of glasses with one name. */
const twinsOf = (glasses: readonly Glass[]): (readonly [number, number])[] =>
  glasses.flatMap(({ nameId }, i) =>
    glasses.flatMap((other, j) => (j > i && other.nameId === nameId ? [[i, j] as const] : [])),
  );

const chunked = <T>(list: readonly T[], size: number): T[][] =>
  Array.from({ length: list.length / size }, (_, i) => list.slice(i * size, (i + 1) * size));
