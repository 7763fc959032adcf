import type { Cask } from "@partsproof/house/protocol";
import { abvDigits, mlDigits, printAge, printCask, printMoney, proofDigits } from "../figures/index.ts";
import { NumberHero } from "./number-hero.tsx";
import { Shares } from "./shares.tsx";
import "./blend-facts.css";

/** What is said of any liquid, blended or not: a vessel's contents and a recipe reckoned in the browser both fit. */
export interface BlendFactsOf {
  readonly abv20: number | null;
  readonly proof60F: number | null;
  readonly volumeMl: number;
  readonly youngestAge: { readonly years: number | null };
  readonly grainShares: readonly { readonly grain: string; readonly share: number }[];
  readonly unknownGrainShare: number;
  readonly casks: readonly {
    readonly species: string;
    readonly held: string;
    readonly shareOfAlcohol: number;
  }[];
}

export interface BlendFactsProps {
  readonly of: BlendFactsOf;
  readonly currency: string;
  /** Minor units a litre; null where a price is not known. */
  readonly perLitre: number | null;
  /** How far the strength may be off, as printed. */
  readonly give?: string;
  /** Leaves the volume out, where it is said elsewhere. */
  readonly noVolume?: boolean;
}

/** Strength, proof, age and cost as numbers; grains and casks as shares of the alcohol. */
export function BlendFacts({ of, currency, perLitre, give, noVolume = false }: BlendFactsProps) {
  if (of.abv20 === null) return <p className="soft">Empty: nothing to say of it.</p>;
  const grains = [
    ...of.grainShares.map(({ grain, share }) => ({ key: grain, name: grain, share })),
    ...(of.unknownGrainShare > 0.0005
      ? [{ key: "(unknown)", name: "grain not known", share: of.unknownGrainShare }]
      : []),
  ];
  return (
    <div className="facts">
      <NumberHero
        size="hero"
        label="Strength"
        value={abvDigits(of.abv20)}
        unit="% vol"
        {...(give === undefined ? {} : { give })}
      />
      <div className="numbers">
        {of.proof60F !== null && (
          <NumberHero label="Proof (US)" value={proofDigits(of.proof60F)} unit="proof" />
        )}
        {!noVolume && <NumberHero label="Volume" value={mlDigits(of.volumeMl)} unit="mL" />}
        <NumberHero
          label="Youngest"
          value={
            of.youngestAge.years === null ? "none" : (printAge(of.youngestAge.years).split(" ")[0] ?? "")
          }
          unit={of.youngestAge.years === null ? "stated" : of.youngestAge.years === 1 ? "year" : "years"}
        />
        {perLitre === null ? (
          <NumberHero label="Cost of 700 mL" value="?" unit="" note="a price is not known" />
        ) : (
          <NumberHero label="Cost of 700 mL" value={printMoney(perLitre * 0.7, currency)} unit="" />
        )}
      </div>
      <div className="facts-shares">
        {grains.length > 0 && (
          <section>
            <h3>Grains</h3>
            <Shares label="Grains, as shares of the alcohol" shares={grains} />
          </section>
        )}
        {of.casks.length > 0 && (
          <section>
            <h3>Casks</h3>
            <Shares
              label="Casks, as shares of the alcohol that lay in them"
              shares={of.casks.map((cask) => ({
                key: `${cask.species}, ${cask.held}`,
                name: printCask(cask as Cask),
                share: cask.shareOfAlcohol,
              }))}
            />
          </section>
        )}
      </div>
      {(grains.length > 0 || of.casks.length > 0) && (
        <p className="soft small">
          Shares are of the pure alcohol. A whiskey that lay in two casks counts in both, so casks can pass
          100 %.
        </p>
      )}
    </div>
  );
}
