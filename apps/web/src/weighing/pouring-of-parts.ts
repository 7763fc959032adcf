import { partsToFill } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { answered, type Carried, no, type No } from "../bench/index.ts";
import { printAbv } from "../figures/index.ts";
import type { Pouring } from "./pouring.ts";

/** Parts from the bench, made up to a final volume: what is poured of each. A liquid there has a strength and no name. */
export function pouringOfParts(
  { parts, waterTo }: Carried,
  finalMl: number,
): ({ readonly ok: true } & Pick<Pouring, "parts" | "sources">) | No {
  return answered<{ readonly ok: true } & Pick<Pouring, "parts" | "sources">>(() => {
    const used = parts.filter((one) => one.parts > 0);
    const done = partsToFill({
      parts: used.map((one) => ({ parts: one.parts, abv20: abv20(one.abv20) })),
      finalMl: millilitres20(finalMl),
      ...(waterTo === null ? {} : { to: abv20(waterTo) }),
    });
    if (!done.ok) return no(done.issue.message, printAbv(done.nearest.abv20));
    const label = (at: number): string => {
      const { abv20: strength } = used[at] ?? { abv20: 0 };
      return strength === 0 ? "Water" : `Liquid ${at + 1}, ${printAbv(strength)}`;
    };
    return {
      ok: true,
      parts: used.map((_, at) => ({ label: label(at), plannedMl: done.pours[at]?.volumeMl ?? 0 })),
      sources: used.map((one, at) => ({
        label: label(at),
        part: at,
        abv20: one.abv20,
        from: null,
        haveMl: null,
      })),
    };
  });
}
