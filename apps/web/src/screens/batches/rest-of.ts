import type { Batch } from "@partsproof/house/protocol";
import { daysBetween } from "../../figures/index.ts";

export interface Rest {
  /** Days asked for. */
  readonly days: number;
  /** Whole days since it was made, at most those asked for. */
  readonly done: number;
  readonly dueAt: string;
}

/** How far a batch has rested at `now`; null where no rest was asked for. */
export function restOf(batch: Pick<Batch, "madeAt" | "restDays" | "restDueAt">, now: number): Rest | null {
  if (batch.restDays === null || batch.restDueAt === null) return null;
  const done = Math.max(0, Math.min(batch.restDays, daysBetween(batch.madeAt, now)));
  return { days: batch.restDays, done, dueAt: batch.restDueAt };
}
