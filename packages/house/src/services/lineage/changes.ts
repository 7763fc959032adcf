import type { LineageChange, SlotOf } from "../../protocol/index.ts";
import type { RecipeVersionRow } from "../rows.ts";

type Body = RecipeVersionRow["body"];
type LabelOf = (of: SlotOf) => string;

/** T2: what a version changed. The same shares in other parts are no change. */
export function changesOf(before: Body, now: Body, labelOf: LabelOf): LineageChange[] {
  const [old, own] = [partsOf(before), partsOf(now)];
  const slots = [...new Map([...own, ...old]).values()].flatMap(({ key, of }): LineageChange[] => {
    const [was, is] = [old.get(key), own.get(key)];
    const [shareBefore, shareNow] = [was?.share ?? 0, is?.share ?? 0];
    if (Math.abs(shareBefore - shareNow) < 1e-12) return [];
    return [
      {
        what: "slot",
        label: labelOf(of),
        partsBefore: was?.parts ?? null,
        partsNow: is?.parts ?? null,
        shareBefore,
        shareNow,
      },
    ];
  });
  return [
    ...slots,
    ...(same(before.waterTo, now.waterTo)
      ? []
      : [{ what: "water" as const, before: before.waterTo, now: now.waterTo }]),
    ...(before.restDays === now.restDays
      ? []
      : [{ what: "rest" as const, before: before.restDays, now: now.restDays }]),
    ...(before.oak === now.oak ? [] : [{ what: "oak" as const, before: before.oak, now: now.oak }]),
  ];
}

const same = (a: Body["waterTo"], b: Body["waterTo"]): boolean =>
  a?.basis === b?.basis && a?.value === b?.value;

interface Part {
  readonly key: string;
  readonly of: SlotOf;
  readonly parts: number;
  readonly share: number;
}

function partsOf({ slots }: Body): ReadonlyMap<string, Part> {
  const all = slots.reduce((total, { parts }) => total + parts, 0);
  return new Map(
    slots
      .filter(({ parts }) => parts > 0)
      .map(({ of, parts }) => {
        const key = JSON.stringify(of);
        return [key, { key, of, parts, share: parts / all }];
      }),
  );
}
