import type { ShelfWhiskey } from "./whiskey.ts";

/** An unknown intensity: the middle of the scale, and the spread of an even guess over all of it, 10 / sqrt 12. */
export const UNKNOWN = { value: 5, sd: 10 / Math.sqrt(12) } as const;

/** Value and spread of one attribute of a whiskey: 0 exactly when it is left out, `UNKNOWN` when it is null. */
export function intensityOf(
  whiskey: ShelfWhiskey,
  attribute: string,
): { readonly value: number; readonly sd: number } {
  const given = whiskey.profile[attribute];
  if (given === undefined) return { value: 0, sd: 0 };
  if (given === null) return UNKNOWN;
  return typeof given === "number" ? { value: given, sd: 0 } : given;
}

/** Which of the target's attributes nobody has said, by whiskey. */
export function unknownValues(
  whiskeys: readonly ShelfWhiskey[],
  attributes: readonly string[],
): readonly { readonly id: string; readonly attribute: string }[] {
  return whiskeys.flatMap(({ id, profile }) =>
    attributes.filter((attribute) => profile[attribute] === null).map((attribute) => ({ id, attribute })),
  );
}
