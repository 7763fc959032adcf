import { restsOn, type TriedHistory } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import type { Answered } from "../../trying/index.ts";
import { inHundred, partsInWords, worthInWords } from "./in-words.ts";

/** What the house believes of all that was tried, and what would prove it wrong. */
export function Believed({
  history,
  answered,
}: {
  readonly history: TriedHistory;
  readonly answered: Answered;
}) {
  const { names } = history;
  const { flight } = answered;
  const order = flight.posterior.toSorted((a, b) => b.mean - a.mean);
  const [surest] = flight.glasses
    .map((glass, at) => ({ ...glass, at }))
    .filter(({ kind }) => kind !== "anchor")
    .toSorted((a, b) => Math.abs(b.better - 0.5) - Math.abs(a.better - 0.5));
  return (
    <Section title="What the house believes">
      {flight.favourite !== null && (
        <p>
          Best of all that can be mixed: <strong>{partsInWords(flight.favourite.parts, names)}</strong>
          {flight.favourite.tried ? "." : ", which nobody has tasted."}
        </p>
      )}
      {surest !== undefined && answered.anchor !== null && (
        <p>
          How it would be proved wrong: it is surest that glass {surest.at + 1} is{" "}
          {surest.better >= 0.5 ? "better" : "worse"} than glass 1 (
          {inHundred(Math.max(surest.better, 1 - surest.better))} in 100). If your order says the other way
          round, more than once, do not believe the map.
        </p>
      )}
      <p>{restsOn(flight.counted)}</p>
      {order.length > 0 && (
        <table className="believed">
          <caption className="unseen">What is believed of what was tried</caption>
          <thead>
            <tr>
              <th scope="col">Tried</th>
              <th scope="col">Log worth</th>
              <th scope="col">Best of them, of 100</th>
            </tr>
          </thead>
          <tbody>
            {order.map(({ id, mean, sd, pBest }) => (
              <tr key={id}>
                <th scope="row">{names[id] ?? id}</th>
                <td>{worthInWords(mean, sd)}</td>
                <td>{inHundred(pBest)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p className="soft small">
        Log worth is against the mean of all that was tried; 0.7 more is put first two times to one.{" "}
        {flight.ownShare === 0
          ? "All tasters are taken for one palate: nothing says that they differ."
          : `Tasters differ: ${Math.round(100 * flight.ownShare)} % of what one likes is taken to be their own; this is what all have in common.`}{" "}
        A whiskey that tastes like another is believed to be liked like it.
      </p>
    </Section>
  );
}
