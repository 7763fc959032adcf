/** A shelf too wide for its best recipe to be proven within a minute: the body of a search. Nothing is drawn by chance. */
export function wideSearch(whiskeys: number, rules = { maxBottles: 6, maxParts: 30 }) {
  const attributes = Array.from({ length: 24 }, (_, a) => a);
  const profileOf = (of: (a: number) => number): Record<string, number> =>
    Object.fromEntries(attributes.map((a) => [`a${a}`, of(a)]));
  return {
    whiskeys: Array.from({ length: whiskeys }, (_, n) => ({
      id: `w${n}`,
      abv: 40 + (n % 20),
      profile: profileOf((a) => ((n * 37 + a * 101 + n * a * 13) % 100) / 10),
    })),
    target: { profile: profileOf(() => 5) },
    rules,
  };
}
