import { ATTRIBUTES } from "@partsproof/core/sensory";
import type { Meaning } from "@partsproof/house/protocol";

/** Read, and no strength on a sheet: they hold opposites. */
const ONLY_WORDS: Readonly<Record<string, string>> = {
  "taste.basic": "basic taste",
  "whole.balance": "balance",
};
const NAMES: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [id, name]));

export const meaningName = (means: Meaning): string =>
  means === "nothing" ? "no flavour" : (NAMES.get(means) ?? ONLY_WORDS[means] ?? means);

/** What a word can mean, as the options of a field. */
export const meaningOptions = (
  <>
    <option value="nothing">no flavour at all</option>
    {ATTRIBUTES.map(({ id, name }) => (
      <option key={id} value={id}>
        {name}
      </option>
    ))}
    {Object.entries(ONLY_WORDS).map(([id, name]) => (
      <option key={id} value={id}>
        {name}
      </option>
    ))}
  </>
);
