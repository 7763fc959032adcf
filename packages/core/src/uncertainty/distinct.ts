import type { Input } from "./input.ts";

/** The inputs by `id`, each once. Throws when one `id` stands for two different things. */
export function distinct(inputs: readonly Input[]): ReadonlyMap<string, Input> {
  const all = new Map<string, Input>();
  for (const input of inputs) {
    const known = all.get(input.id);
    if (known !== undefined && (known.value !== input.value || known.kind !== input.kind)) {
      throw new RangeError(
        `inputs of one id require one value, got ${known.value} and ${input.value} for ${input.id}`,
      );
    }
    all.set(input.id, known ?? input);
  }
  return all;
}
