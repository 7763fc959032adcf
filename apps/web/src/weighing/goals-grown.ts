import { resolvePours } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { strengthOfPart } from "./liquid-of.ts";
import { type Pouring, type Standing, WATER } from "./pouring.ts";
import { waterGoal } from "./water-goal.ts";

/**
 * What each part shall come to so that the recipe's ratio is right again, or as nearly as the vessel lets it: core's `resolvePours`
 * on what is poured. Too much water asks for more of everything. Null where nothing can be poured any more.
 */
export function goalsGrown(
  pouring: Pouring,
  now: Pick<Standing, "goals" | "poured" | "empty">,
): readonly number[] | null {
  const planned = pouring.parts.map(({ plannedMl }) => plannedMl);
  const pouredMl = planned.map((_, part) =>
    now.poured.reduce((sum, one) => sum + (pouring.sources[one.source]?.part === part ? one.ml20 : 0), 0),
  );
  const water = now.poured.reduce((sum, one) => sum + (one.source === WATER ? one.ml20 : 0), 0);
  const waterPlanned = waterGoal(pouring, planned, now.poured);
  const times = waterPlanned > 0 ? Math.max(1, water / waterPlanned) : 1;
  const whole = planned.reduce((sum, ml) => sum + ml, 0) * times;
  const done = resolvePours({
    parts: planned.map((parts, part) => ({
      parts,
      abv20: abv20(strengthOfPart(pouring, part, now.poured)),
      pouredMl: millilitres20(pouredMl[part] ?? 0),
      fixed: pouring.sources.every((source, i) => source.part !== part || now.empty.has(i)),
    })),
    plannedMl: millilitres20(whole),
    ...(pouring.capacityMl === null ? {} : { capacityMl: millilitres20(pouring.capacityMl) }),
    ...(pouring.waterTo === null ? {} : { to: abv20(pouring.waterTo) }),
  });
  const solved = done.ok ? done : done.nearest;
  return solved === null ? null : pouredMl.map((ml, part) => ml + (solved.addMl[part] ?? 0));
}
