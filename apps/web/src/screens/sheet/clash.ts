import type { Sheet } from "@partsproof/house/protocol";
import { joinFields } from "./join-fields.ts";
import { type Fields, fieldsOf, type FieldValue, isFieldOf, sameValue } from "./sheet-fields.ts";

/** What to do where two devices wrote on one sheet: this one's over the other's, the other's alone, or both texts. */
export type Choice = "here" | "there" | "both";

export interface Clash {
  readonly base: Fields;
  readonly there: Fields;
  readonly lines: readonly {
    readonly key: string;
    readonly here: FieldValue;
    readonly there: FieldValue;
  }[];
}

/**
 * What this device and another wrote since `base`, side by side; null where there is nothing to choose, since this device has
 * nothing that is not there. "same field" asks only where both wrote in one place, "any field" wherever both wrote at all.
 */
export function clashOf(
  base: Fields,
  mine: ReadonlyMap<string, FieldValue>,
  sheet: Sheet,
  where: "same field" | "any field",
): Clash | null {
  const there = fieldsOf(sheet);
  const here = [...mine].filter(([key, value]) => isFieldOf(there, key) && !sameValue(there.get(key), value));
  const all = new Set([...base.keys(), ...there.keys()]);
  const written = [...all].filter(
    (key) => isFieldOf(there, key) && !sameValue(base.get(key), there.get(key)),
  );
  const asked = where === "any field" ? here : here.filter(([key]) => written.includes(key));
  if (asked.length === 0 || written.length === 0) return null;
  const keys = new Set([...here.map(([key]) => key), ...written]);
  const lines = [...keys].map((key) => ({
    key,
    here: mine.get(key) ?? base.get(key) ?? null,
    there: there.get(key) ?? null,
  }));
  return { base, there, lines };
}

/** What is still to be sent after the choice. */
export function chosen(
  { base, there }: Clash,
  choice: Choice,
  mine: ReadonlyMap<string, FieldValue>,
): ReadonlyMap<string, FieldValue> {
  if (choice === "there") return new Map();
  if (choice === "both") return joinFields(base, mine, there).mine;
  return new Map([...mine].filter(([key, value]) => !sameValue(there.get(key), value)));
}
