import { type BodyRead, type Shared, type SharedAs, writeRecipeLink } from "../../protocol/index.ts";
import { checkRecipe } from "../filling/index.ts";
import { refuse } from "../refuse.ts";
import { type Amount, amountsOf } from "./amounts.ts";
import type { Passed } from "./passed.ts";
import { shareCard } from "./share-card.ts";
import { shareMarkdown } from "./share-markdown.ts";
import { sharePage } from "./share-page.ts";
import { shareText } from "./share-text.ts";
import { SQUARE_BYTES, squareOf, squareSvg } from "./square.ts";
import { wordsOf } from "./words.ts";

const KINDS: Readonly<Record<SharedAs, readonly [ending: string, type: string]>> = {
  link: ["url.txt", "text/plain;charset=utf-8"],
  html: ["html", "text/html;charset=utf-8"],
  text: ["txt", "text/plain;charset=utf-8"],
  markdown: ["md", "text/markdown;charset=utf-8"],
  card: ["svg", "image/svg+xml"],
  square: ["square.svg", "image/svg+xml"],
};

/** A recipe file as what it is to be passed on as. Nothing but the file and the address given goes into it. */
export async function shareRecipe({
  recipe,
  as,
  address,
  bottleMl,
}: BodyRead<"shareRecipe">): Promise<Shared> {
  const { canonical, sha256 } = await checkRecipe(recipe);
  const link = await writeRecipeLink(canonical, address);
  const square = squareOf(link);
  const amounts = amountsOf(recipe);
  const passed: Passed = {
    recipe,
    words: wordsOf(recipe),
    amounts,
    bottleMl,
    link,
    square,
    canonical,
    sha256,
  };
  const [ending, type] = KINDS[as];
  return {
    as,
    name: `${fileName(recipe.name)}.${ending}`,
    type,
    text: await made(as, passed),
    link,
    square: { fits: square !== null, characters: link.length, most: SQUARE_BYTES },
    amounts: {
      ...amounts,
      bottleMl,
      slots: amounts.slots.map((amount) => timesBottle(amount, bottleMl)),
      water: amounts.water === null ? null : timesBottle(amounts.water, bottleMl),
    },
    sha256,
  };
}

const timesBottle = ({ ml, g }: Amount, bottleMl: number): Amount => ({
  ml: (ml * bottleMl) / 1000,
  g: g === null ? null : (g * bottleMl) / 1000,
});

async function made(as: SharedAs, passed: Passed): Promise<string> {
  const { link, square, words } = passed;
  switch (as) {
    case "link":
      return link;
    case "html":
      return sharePage(passed);
    case "text":
      return shareText(passed);
    case "markdown":
      return shareMarkdown(passed);
    case "card":
      return shareCard(passed);
    case "square":
      if (square === null)
        refuse(422, {
          code: "square_too_small",
          path: ["recipe"],
          limit: `a link of at most ${SQUARE_BYTES} characters`,
          received: link.length,
          message: `a square code requires a link of at most ${SQUARE_BYTES} characters, got ${link.length}: ${words.name} can be passed on as a link, a page or a file`,
        });
      return squareSvg(square, "Square code of a recipe's link");
  }
}

/** A name any file system takes. */
const fileName = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, "-")
    .replaceAll(/^-|-$/gu, "")
    .slice(0, 80) || "recipe";
