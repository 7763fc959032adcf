import type { Contents } from "@partsproof/house/protocol";
import type { Fact } from "./facts.ts";
import { abv, g, ml, money, percent, proof } from "./figures.ts";

/** Everything about what a vessel holds. */
export function contentsFacts(contents: Contents, currency: string): readonly Fact[] {
  const [holds, strength, cost] = liquidFacts(contents, currency);
  if (contents.massG === 0) return [holds];
  const { composition, youngestAge, grainShares, unknownGrainShare, casks } = contents;
  const grains = grainShares.map(({ grain, share }) => `${percent(share)} ${grain}`);
  const all = unknownGrainShare > 0.0005 ? [...grains, `${percent(unknownGrainShare)} not known`] : grains;
  return [
    holds,
    strength,
    [
      "Made of",
      composition
        .map(({ label, shareOfAlcohol, shareOfMass }) =>
          shareOfAlcohol === 0
            ? `${percent(shareOfMass)} of the mass ${label}`
            : `${percent(shareOfAlcohol)} of the alcohol ${label}`,
        )
        .join("\n"),
    ],
    ["Youngest age", youngestAge.years === null ? youngestAge.why : `${youngestAge.years} years`],
    ["Grain", all.length === 0 ? null : all.join(", ")],
    [
      "Casks",
      casks.length === 0
        ? null
        : casks.map((c) => `${percent(c.shareOfAlcohol)} ${c.species}, held ${c.held}`).join("\n"),
    ],
    cost,
  ];
}

/** How much, how strong, at what cost. */
export function liquidFacts(contents: Contents, currency: string): readonly [Fact, Fact, Fact] {
  const { cost, volumeMl, massG, abv20, proof60F } = contents;
  if (massG === 0)
    return [
      ["Holds", "nothing"],
      ["Strength", null],
      ["Cost", null],
    ];
  const known = money(cost.knownMinor, currency);
  return [
    ["Holds", `${ml(volumeMl)} (${g(massG)})`],
    ["Strength", `${abv(abv20)} at 20 °C, ${proof(proof60F)} at 60 °F`],
    [
      "Cost",
      cost.perLitreMinor === null
        ? `at least ${known}; ${percent(cost.unpricedShareOfMass)} of it has no known price`
        : `${known}, ${money(cost.perLitreMinor, currency)} a litre`,
    ],
  ];
}
