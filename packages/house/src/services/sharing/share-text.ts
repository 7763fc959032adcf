import type { Passed } from "./passed.ts";
import { AT_20, CARE, CARE_OAK, mlOf } from "./words.ts";

/** For a post, a message or a video description: lines of plain text. */
export function shareText({ words, amounts, bottleMl, link, sha256 }: Passed): string {
  const litres = bottleMl / 1000;
  const slots = words.slots.flatMap(({ parts, title, facts, rule, reason }, n) => [
    `${parts} ${parts === 1 ? "part" : "parts"}: ${[title, facts].filter((text) => text !== "").join(", ")}, ${mlOf(amounts.slots[n]!.ml * litres)}`,
    ...(rule === null ? [] : [`   or any: ${rule}`]),
    ...(reason === "" ? [] : [`   ${flat(reason)}`]),
  ]);
  const water = amounts.water === null ? [] : [`Water: ${mlOf(amounts.water.ml * litres)}`];
  return [
    words.name,
    `${words.ratio}, for ${mlOf(bottleMl)}`,
    "",
    ...slots,
    ...water,
    "",
    `${words.after.join(". ")}.`,
    ...said(words),
    ...(amounts.without === null ? [AT_20] : [amounts.without]),
    "",
    "Open it, fill it from another shelf:",
    link,
    "",
    `${CARE} ${CARE_OAK}`,
    `Recipe file, SHA-256 ${sha256}`,
    "",
  ].join("\n");
}

/** What is said besides the slots, where there is any. */
export const said = ({ original, findings, lineage, credits, note }: Passed["words"]): string[] =>
  [original, findings, lineage, credits, note].flatMap((text) =>
    text === null || text === "" ? [] : [flat(text)],
  );

const flat = (text: string): string => text.replaceAll(/\s+/gu, " ").trim();
