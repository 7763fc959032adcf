import type { Rest } from "@partsproof/house/protocol";
import { printDay } from "../../figures/index.ts";
import { NumberHero, Section } from "../../parts/index.ts";

type Piece = Rest["oak"][number];

/** The wood that is in, and what it comes to. */
export function OakIn({ rest }: { readonly rest: Rest }) {
  const { dose } = rest;
  if (dose === null) return null;
  const soaks = dose.soaksUpMl;
  return (
    <Section title="The wood">
      <ul className="rest-wood">
        {rest.oak.map((piece) => (
          <li key={piece.id}>
            {woodWords(piece)}
            <span className="soft small">, in since {printDay(piece.inAt)}</span>
          </li>
        ))}
      </ul>
      <div className="numbers">
        <NumberHero label="Contact, a litre" value={dose.areaPerLitre.toFixed(0)} unit="cm²" />
        <NumberHero
          label="Against a 200 L cask"
          value={dose.caskRatio.toFixed(2)}
          unit="times"
          note={`${dose.caskRatioLow.toFixed(2)} to ${dose.caskRatioHigh.toFixed(2)}`}
        />
        {dose.gramsPerLitre !== null && (
          <NumberHero label="Grams, a litre" value={dose.gramsPerLitre.toFixed(1)} unit="g" />
        )}
      </div>
      {soaks !== null && (
        <p className="soft small">
          It soaks up about {soaks.low.toFixed(0)} to {soaks.high.toFixed(0)} mL: {soaks.how}.
        </p>
      )}
    </Section>
  );
}

function woodWords({ piece, count, areaCm2, grams, species, toast, use }: Piece): string {
  const what =
    piece === null
      ? "Wood"
      : piece.shape === "chips"
        ? "Chips"
        : `${count} ${piece.shape}${count === 1 ? "" : "s"}`;
  return [
    what,
    `${areaCm2.toFixed(0)} cm²`,
    grams === null ? "" : `${grams.toFixed(1)} g`,
    species === "not known" ? "" : species,
    toast,
    use === 1 ? "new" : `use ${use}`,
  ]
    .filter((part) => part !== "")
    .join(", ");
}
