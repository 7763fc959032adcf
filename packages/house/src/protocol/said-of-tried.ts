import { type History, type MarkSheet as Marked, marksOrOrder } from "@partsproof/core/learning";
import { marksIn, type MarkSheet } from "./mark-sheet.ts";
import type { NextFlightDraft } from "./next-flight.ts";

type Body = Pick<NextFlightDraft, "rankings" | "scores" | "target">;

const plain = (sheet: MarkSheet) => marksIn(sheet).map(({ id, mark }) => ({ id, mark }));

/**
 * What a history says, as the model takes it: each sheet once, by its marks or by its order (`marksOrOrder`). With a target, better is
 * closer: marks of liking are then left out, and the target itself stands at the top of the scale.
 */
export function saidOfTried({
  rankings,
  scores = [],
  target,
}: Body): Pick<History, "rankings" | "tasters" | "marks"> {
  const sought = target === undefined ? "liking" : "closeness";
  const asked = scores.filter(({ of = sought }) => of === sought);
  const orders = rankings.map((one) =>
    Array.isArray(one) ? { taster: null, flight: undefined, order: one } : one,
  );
  const sameSheet = (a: { taster?: string | null; flight?: string | undefined }, b: MarkSheet): boolean =>
    a.flight !== undefined && a.flight === b.flight && a.taster === b.taster;
  const byOrder = new Set(
    asked.filter((sheet) =>
      orders.some((one) => sameSheet(one, sheet) && marksOrOrder(one.order, plain(sheet)) === "order"),
    ),
  );
  const marked = asked.filter((sheet) => !byOrder.has(sheet));
  const ranked = orders.filter((one) => !marked.some((sheet) => sameSheet(one, sheet)));
  return {
    rankings: ranked.map(({ order }) => order),
    tasters: ranked.map(({ taster }) => taster),
    marks: marked.map(
      (sheet): Marked => ({
        taster: sheet.taster ?? null,
        marks: plain(sheet),
        ...(sheet.scale === undefined ? {} : { scale: sheet.scale }),
        ...(target === undefined ? {} : { top: target }),
      }),
    ),
  };
}
