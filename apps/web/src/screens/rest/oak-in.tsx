import type { Rest } from "@partsproof/house/protocol";
import { countDays, daysBetween, printDay } from "../../figures/index.ts";
import { NumberHero, Section } from "../../parts/index.ts";
import { TakeOut } from "./take-out.tsx";

type Piece = Rest["oak"][number];

/** The wood that is in or was, piece by piece, and what it comes to now. */
export function OakIn({ rest }: { readonly rest: Rest }) {
  const { dose, oak } = rest;
  if (oak.length === 0) return null;
  return (
    <Section title="The wood">
      <ul className="rest-wood">
        {rest.oak.map((piece) => (
          <li key={piece.id}>
            <p>
              {woodWords(piece)}
              <span className="soft small">, {daysIn(piece)}</span>
            </p>
            {rest.endedAt === null && <TakeOut rest={rest} piece={piece} name={woodWords(piece)} />}
          </li>
        ))}
      </ul>
      {dose === null ? <p>No wood is in now: all of it is out.</p> : <Comes to={dose} />}
    </Section>
  );
}

/** What the wood that is in comes to. */
function Comes({ to: dose }: { readonly to: NonNullable<Rest["dose"]> }) {
  const soaks = dose.soaksUpMl;
  return (
    <>
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
    </>
  );
}

const daysIn = ({ inAt, outAt }: Piece): string =>
  outAt === null
    ? `in since ${printDay(inAt)}`
    : `out since ${printDay(outAt)}, in for ${countDays(daysBetween(inAt, outAt))}`;

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
