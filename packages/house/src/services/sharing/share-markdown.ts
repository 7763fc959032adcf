import type { Passed } from "./passed.ts";
import { said } from "./share-text.ts";
import { AT_20, CARE, CARE_OAK, mlOf } from "./words.ts";

/** The same as a table for a page of Markdown (CommonMark, with GitHub's tables). */
export function shareMarkdown({ words, amounts, bottleMl, link, sha256 }: Passed): string {
  const litres = bottleMl / 1000;
  const rows = words.slots.map(({ parts, title, facts, rule, reason }, n) => {
    const or = rule === null ? "" : plain(rule);
    return `| ${parts} | ${plain(title)} | ${plain(facts)} | ${or} | ${plain(reason)} | ${mlOf(amounts.slots[n]!.ml * litres)} |`;
  });
  const { water } = amounts;
  return [
    `## ${plain(words.name)}`,
    "",
    `${words.ratio}, for ${mlOf(bottleMl)}`,
    "",
    "| parts | whiskey | facts | or any that keeps | why | amount |",
    "| ---: | --- | --- | --- | --- | ---: |",
    ...rows,
    ...(water === null ? [] : [`| | water | | | | ${mlOf(water.ml * litres)} |`]),
    "",
    ...words.after.map((text) => `- ${plain(text)}`),
    ...said(words).map((text) => `- ${plain(text)}`),
    "",
    plain(amounts.without ?? AT_20),
    "",
    `[Open it, fill it from another shelf](${link})`,
    "",
    `*${CARE} ${CARE_OAK}*`,
    "",
    `Recipe file, SHA-256 \`${sha256}\``,
    "",
  ].join("\n");
}

/** A text on one line that means nothing in Markdown or HTML (CommonMark 0.31, 2.4: any ASCII punctuation can be escaped). */
const plain = (text: string): string =>
  text
    .replaceAll(/\s+/gu, " ")
    .trim()
    .replaceAll(/[\\`*_{}[\]<>()#+!|~&^$@-]/gu, String.raw`\$&`);
