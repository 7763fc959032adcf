import type { Amount } from "./amounts.ts";
import { columnOf } from "./column.ts";
import { escaped } from "./escaped.ts";
import { PAGE_SCRIPT } from "./page-script.ts";
import { PAGE_STYLE } from "./page-style.ts";
import type { Passed } from "./passed.ts";
import { said } from "./share-text.ts";
import { squareSvg } from "./square.ts";
import { AT_20, CARE, CARE_OAK, gOf, mlOf, type SlotWords } from "./words.ts";

/** Names the recipe's own text in the page, by which the page is read again. */
export const PAGE_RECIPE = "partsproof-recipe";
const SIZES = [50, 100, 350, 700, 750, 1000];

/**
 * One page that holds all of the recipe, opened from a disk with no network. Its policy (CSP level 3) lets it fetch nothing and run
 * only the script whose hash it names; what the recipe says is text in it, never markup.
 */
export async function sharePage(passed: Passed): Promise<string> {
  const { words, amounts, bottleMl, link, square, canonical, sha256 } = passed;
  const policy = `default-src 'none'; style-src '${await hashOf(PAGE_STYLE)}'; script-src '${await hashOf(PAGE_SCRIPT)}'; base-uri 'none'; form-action 'none'`;
  const column = columnOf(
    words.slots.map(({ parts }) => parts),
    { x: 2, y: 2, width: 76, height: 396 },
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${escaped(words.name)}</title>
<style>${PAGE_STYLE}</style>
</head>
<body>
<main>
<h1>${escaped(words.name)}</h1>
<p class="ratio">${words.ratio}</p>
<div class="bottle" hidden>
<div><label for="bottle">Bottle, mL</label><input id="bottle" inputmode="decimal" value="${bottleMl}" aria-describedby="wrong"></div>
${SIZES.map((size) => `<button type="button" data-size="${size}">${size}</button>`).join("\n")}
</div>
<p id="wrong" role="alert"></p>
<div class="both">
<svg viewBox="0 0 80 400" role="img" aria-label="${escaped(`A column of ${words.slots.length} liquids, ${words.ratio}`)}">${column.svg}</svg>
<ol>
${words.slots.map((slot, n) => slotItem(slot, amounts.slots[n]!, bottleMl)).join("\n")}
${amounts.water === null ? "" : `<li class="slot"><p class="amount">${amountOut(amounts.water, bottleMl)}</p><p>Water</p></li>`}
</ol>
</div>
<p>${escaped(`${words.after.join(". ")}.`)}${amounts.abv === null ? "" : ` It comes to ${amounts.abv.toFixed(1)} % vol.`}</p>
${amounts.without === null ? "" : `<p><strong>${escaped(amounts.without)}</strong></p>`}
<p class="small">${amounts.without === null ? `${AT_20} ` : ""}Reckoned with the strengths shown. Other bottles have others: fill the recipe from your own shelf for theirs.</p>
${said(words)
  .map((text) => `<p>${escaped(text)}</p>`)
  .join("\n")}
<section class="screen">
<h2>Fill it from another shelf</h2>
<p>The whole recipe stands in this link. Opening it sends the recipe to nobody; pasted into any Parts &amp; Proof house, it opens there. So does this file.</p>
<p class="small"><a href="${escaped(link)}" rel="noreferrer">${escaped(link)}</a></p>
${square === null ? '<p class="small">The recipe is too long for a square code.</p>' : squareSvg(square, "Square code of the link").replace("<svg ", '<svg class="square" ')}
</section>
<p class="small care">${CARE} ${CARE_OAK} Recipe file, SHA-256 ${sha256}.</p>
</main>
<script type="application/json" id="${PAGE_RECIPE}">${canonical.replaceAll("<", String.raw`\u003c`)}</script>
<script>${PAGE_SCRIPT}</script>
</body>
</html>
`;
}

const slotItem = (
  { parts, title, facts, rule, reason }: SlotWords,
  amount: Amount,
  bottleMl: number,
): string =>
  `<li class="slot"><p class="amount">${amountOut(amount, bottleMl)}</p><p>${parts} ${parts === 1 ? "part" : "parts"}: ${escaped(title)}${facts === "" ? "" : `, ${escaped(facts)}`}</p>${rule === null ? "" : `<p>Or any: ${escaped(rule)}</p>`}${reason === "" ? "" : `<p class="small">${escaped(reason)}</p>`}</li>`;

function amountOut({ ml, g }: Amount, bottleMl: number): string {
  const litres = bottleMl / 1000;
  const out = (value: number, unit: string, shown: string): string =>
    `<span data-litre="${value}" data-unit="${unit}">${shown}</span>`;
  return `${out(ml, "mL", mlOf(ml * litres))}${g === null ? "" : ` <span class="small">or ${out(g, "g", gOf(g * litres))}</span>`}`;
}

async function hashOf(text: string): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return `sha256-${btoa(String.fromCharCode(...new Uint8Array(digest)))}`;
}
