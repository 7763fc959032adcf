import type { AnswerOf } from "@partsproof/house/protocol";
import type { Ref } from "react";
import { DrawFigure, drawIntervals, WIDTHS } from "../../plots/index.ts";
import { drinksDigits, gramsDigits } from "../flights/print-alcohol.ts";
import { oneDigit, share, twoDigits } from "./counted-words.ts";

interface Props {
  readonly ref: Ref<HTMLElement>;
  readonly finding: AnswerOf<"getFinding">;
  readonly weighed: AnswerOf<"getWeighedFlight">;
  readonly day: string;
  readonly invented: boolean;
}

/** Everything of the evening on one sheet of paper or two. */
export function WriteUpArticle({ ref, finding, weighed, day, invented }: Props) {
  const { flight, glasses, sheets, alcoholPerTaster: alcohol } = finding;
  const { worths, poursTogether, known, mixUps, apart, wordTests } = weighed;
  const titled = (glass: number): string => {
    const one = glasses[glass];
    if (one === undefined) return "";
    return one.pour === "" ? one.label : `${one.label} (${one.pour})`;
  };
  return (
    <article className="writeup" ref={ref}>
      <header>
        <p className="writeup-small">
          {day}
          {flight.pourer !== null && `, poured by ${flight.pourer}`}; tasted by{" "}
          {sheets.map(({ taster }) => taster).join(", ")}
        </p>
        <h2>{flight.name}</h2>
        <p className="writeup-headline">{finding.headline}.</p>
        {invented && (
          <p className="writeup-invented">
            Invented: this is the demo household. Its whiskeys, tasters and sheets are made up.
          </p>
        )}
      </header>
      {worths !== null && (
        <section>
          <h3>The order, and how sure it is</h3>
          <DrawFigure
            drawing={drawIntervals(
              worths.items.map(({ label, worth, low, high, target }) => ({
                label,
                value: worth,
                low,
                high,
                said: oneDigit(worth),
                ring: target,
              })),
              WIDTHS.wide,
            )}
          />
          <table>
            <thead>
              <tr>
                <th scope="col">
                  {worths.closeTo === null ? "By liking" : `By closeness to ${worths.closeTo}`}
                </th>
                <th scope="col">Log worth, 95 %</th>
                <th scope="col">First</th>
                <th scope="col">Expected place</th>
              </tr>
            </thead>
            <tbody>
              {worths.items.map(({ key, label, worth, low, high, ranks, expectedRank }) => (
                <tr key={key}>
                  <th scope="row">{label}</th>
                  <td>
                    {twoDigits(worth)} ({twoDigits(low)} to {twoDigits(high)})
                  </td>
                  <td>{share(ranks[0] ?? 0)}</td>
                  <td>{oneDigit(expectedRank)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p>{worths.best.sentence}</p>
          {worths.pairs.map(({ other, sentence }) => (
            <p key={other}>{sentence}</p>
          ))}
          {poursTogether.map(({ name, sentence }) => (
            <p key={name}>{sentence}</p>
          ))}
          <p className="writeup-small">
            {worths.pairsSaid} {worths.placesSaid} {worths.method}.
          </p>
        </section>
      )}
      {(known !== null || mixUps !== null || apart !== null) && (
        <section>
          <h3>What could be told</h3>
          {finding.ranks !== null && <p>{finding.ranks.sentence}</p>}
          {known !== null && <p>{known.sentence}</p>}
          {mixUps !== null && <p>{mixUps.sentence}</p>}
          {apart !== null && <p>{apart.sentence}</p>}
          {wordTests !== null && <p>{wordTests.sentence}</p>}
        </section>
      )}
      {sheets.map(({ sheetId, taster, state, glasses: own, guessed, right, luck }) => (
        <section key={sheetId} className="writeup-sheet">
          <h3>{taster}</h3>
          <p className="writeup-small">
            {state === "locked" ? "" : "The sheet was not locked and counts for nothing. "}
            {guessed > 0 &&
              `${right} of ${guessed} named right${luck === null || right === 0 ? "" : `: ${luck.words}`}.`}
          </p>
          <table>
            <thead>
              <tr>
                <th scope="col">Glass</th>
                <th scope="col">Was</th>
                <th scope="col">Guessed</th>
                <th scope="col">Place</th>
                <th scope="col">Score</th>
                <th scope="col">Notes</th>
              </tr>
            </thead>
            <tbody>
              {own.map(({ set, code, position, glass, guessLabel, right: ok, rank, notes }) => (
                <tr key={`${set ?? 0} ${position} ${code}`}>
                  <th scope="row">{code}</th>
                  <td>{titled(glass)}</td>
                  <td>{guessLabel === null ? "–" : ok === true ? "right" : guessLabel}</td>
                  <td>{rank ?? "–"}</td>
                  <td>{notes?.score ?? "–"}</td>
                  <td>{notes === null ? "" : noteOf(notes)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
      <section>
        <h3>What this cannot say</h3>
        <ul>
          {[...finding.cannotSay, ...finding.leftOut].map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <p className="writeup-small">
          For each taster {gramsDigits(alcohol.grams)} g of pure alcohol was poured,{" "}
          {drinksDigits(alcohol.usStandardDrinks)} US standard drinks, {drinksDigits(alcohol.ukUnits)} UK
          units. Never before driving, of legal age only, not in pregnancy.
        </p>
      </section>
    </article>
  );
}

type Notes = NonNullable<AnswerOf<"getFinding">["sheets"][number]["glasses"][number]["notes"]>;

const noteOf = ({ first, second }: Notes): string =>
  [first, second]
    .map(({ nose, palate, finish }) => [nose, palate, finish].filter((text) => text !== "").join("; "))
    .filter((text) => text !== "")
    .join(" · ");
