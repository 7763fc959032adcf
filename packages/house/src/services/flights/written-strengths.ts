import { ATTRIBUTES } from "@partsproof/core/sensory";
import { type Issue, SECTIONS, type SheetStrength, type StrengthsEdit } from "../../protocol/index.ts";
import { issue, unknownCode } from "./edit-issue.ts";
import type { SheetRow } from "../rows.ts";

type Where = Pick<SheetStrength, "code" | "pass" | "section" | "attribute">;

const whereOf = ({ code, pass, section, attribute }: Where): string =>
  `${attribute} of the ${section} of glass ${code}, ${pass} pass`;

const PLACES = new Map<string, number>(ATTRIBUTES.map(({ id }, i) => [id, i]));

/** E6: the intensities after an edit, in one order whatever order they came in; what is taken back is not among them. */
export function strengthsAfter(
  order: readonly string[],
  old: readonly SheetStrength[],
  edit: StrengthsEdit,
): readonly SheetStrength[] {
  const byPlace = new Map([...old, ...edit].map((said) => [whereOf(said), said]));
  const place = ({ code, pass, section, attribute }: Where): number =>
    ((order.indexOf(code) * 2 + Number(pass === "second")) * SECTIONS.length + SECTIONS.indexOf(section)) *
      ATTRIBUTES.length +
    (PLACES.get(attribute) ?? 0);
  return [...byPlace.values()]
    .flatMap(({ strength, ...of }) => (strength === null ? [] : [{ ...of, strength }]))
    .toSorted((a, b) => place(a) - place(b));
}

/** E6: each about a glass of the sheet, and nothing of a glass twice. */
export function strengthIssues(edit: StrengthsEdit, { order }: Pick<SheetRow, "order">): Issue[] {
  const seen = new Set<string>();
  return edit.flatMap((said, i) => {
    if (!order.includes(said.code)) return [unknownCode(["strengths", i, "code"], said.code, { order })];
    const where = whereOf(said);
    if (!seen.has(where)) {
      seen.add(where);
      return [];
    }
    return [issue("strength_named_twice", ["strengths", i], "each intensity once", where, "an edit")];
  });
}
