import { shareThere } from "./curves.ts";
import type { Form } from "./question.ts";

/**
 * The time, in units of the slow stage, at which a share of the rise is there: the inverse of `shareThere`.
 *
 * Newton's steps from the left, where the share would be there if all of it were quick: the share rises ever more slowly, so a tangent
 * never steps past the time. Accuracy: relative 1e-10 of the share.
 */
export function timeOfShare(form: Form, quick: number, faster: number, share: number): number {
  if (form === "peleg") return share / (1 - share);
  let time = -Math.log1p(-share) / faster;
  for (let i = 0; i < 100; i += 1) {
    const [washed, given] = [Math.exp(-faster * time), Math.exp(-time)];
    const missing = share - shareThere(form, quick, faster, time);
    if (missing <= 1e-10) break;
    time += missing / (quick * faster * washed + (1 - quick) * given);
  }
  return time;
}
