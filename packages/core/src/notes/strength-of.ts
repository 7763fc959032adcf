import type { Stance } from "./language.ts";
import type { Mention } from "./mention.ts";

const PLAIN = 5;

/** How strong a flavour is said to be, 0 to 10: by the degree nearest to it, pushed further by "very". Common practice, no source. */
export function strengthOf(mention: Mention, stance: Stance): number {
  if (stance === "absent") return 0;
  if (mention.little) return 2.2;
  if (stance === "more") return mention.amplified || much(mention) ? 7.5 : 5.8;
  if (stance === "less") return mention.amplified || much(mention) ? 2.5 : 4.2;
  return graded(mention, stance === "unsure" ? 4.6 : PLAIN);
}

/** "much sweeter", "far less smoke". */
const much = ({ degrees }: Mention): boolean => degrees.some(({ strength }) => strength > 7);

function graded({ degrees, inherent }: Mention, plain: number): number {
  const plainly = degrees.filter(({ amplify }) => !amplify);
  // "a tiny hit of mint" is weak.
  const nearest =
    plainly.findLast(({ strength }) => Math.abs(strength - PLAIN) > 1.5) ??
    plainly.findLast(({ strength }) => Math.abs(strength - PLAIN) > 0.7) ??
    plainly.at(-1) ??
    degrees.at(-1);
  if (nearest === undefined) return inherent ?? plain;
  const very = degrees.some(({ amplify }) => amplify) && !nearest.amplify;
  const { strength } = nearest;
  const pushed = very
    ? clamp(strength < PLAIN ? strength - 0.7 : strength > PLAIN + 0.9 ? strength + 0.7 : strength)
    : strength;
  if (inherent === null) return pushed;
  if (inherent < PLAIN) return clamp(pushed > PLAIN ? inherent - 0.8 : inherent + 0.5);
  // "quite thick"
  if (inherent > PLAIN) return clamp(pushed > PLAIN ? inherent + 0.8 : pushed > 4 ? 6 : 3.2);
  return pushed;
}

const clamp = (strength: number): number => Math.min(10, Math.max(0.3, strength));

/** Standard deviation of that strength: words are rough measures, hedged ones rougher. Common practice, no source. */
export function spreadOf({ degrees, inherent }: Mention, stance: Stance): number {
  if (stance === "absent") return 0.6;
  if (stance === "unsure") return 2.4;
  if (stance === "more" || stance === "less") return 2;
  return degrees.length > 0 || inherent !== null ? 1.3 : 1.7;
}
