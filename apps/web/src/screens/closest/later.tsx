import { memo, type ReactElement } from "react";
import { useSettled } from "../batches/use-settled.ts";

/** Time for one part to be drawn on a phone four times slower than this. */
export const STEP_MS = 60;

/** What stands in it follows so long after its reason: parts of a page one after the other, never all in one task. */
export const Later = memo(function Later({
  after,
  children,
}: {
  readonly after: number;
  readonly children: ReactElement;
}) {
  return useSettled(children, after);
});
