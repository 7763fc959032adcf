import { type Draft, is, isStop, type Mention, OWN_RIGHT, says } from "./mention.ts";
import { derived } from "./word-forms.ts";

const ADJECTIVE = /(?:ic|ed|ing|al|ful)$/;

/** Whether a flavour says how something is: "sweet", "smoky". */
const adjectival = ({ items, lexicon }: Draft, { at, last, attributes }: Mention): boolean =>
  at === last &&
  (attributes.some((id) => OWN_RIGHT.test(id)) ||
    ADJECTIVE.test(items[at]?.text ?? "") ||
    // "smoky", not "hay"
    ((items[at]?.text ?? "").endsWith("y") && derived(items[at]?.text ?? "", lexicon) !== null));

/** The adjectives right before the name of a part: "a long, warm and spicy finish". None where it is said what the part is ("finish is"). */
export function adjectivesBefore(draft: Draft, n: number): readonly Mention[] {
  const { items, at } = draft;
  const next = items[n + 1];
  if (next !== undefined && says(next, "link") && !says(next, "glue")) return [];
  let near: readonly Mention[] | null = null;
  const found: Mention[] = [];
  let m = n - 1;
  for (; m >= 0 && m > n - 14; m--) {
    const item = items[m];
    if (item === undefined || isStop(item) || item.mark === "colon") break;
    const mention = at[m];
    if (mention !== undefined) {
      if (mention.not || !adjectival(draft, mention)) break;
      if (near === null && m < n - 2) return [];
      found.push(mention);
      continue;
    }
    if (is(item, "beforePart")) return found;
    if (item.mark === "comma" || says(item, "join")) {
      near ??= [...found];
      if (near.length === 0) return [];
    } else if (!says(item, "length") && !says(item, "degree") && !says(item, "liking")) break;
  }
  const edge = items[m];
  const open = edge === undefined || edge.mark !== "" || says(edge, "where") === undefined;
  return near ?? (open ? found : []);
}
