import { type Because, printDistance } from "../../closest/index.ts";
import { listed } from "../../figures/index.ts";
import { partsWords } from "./parts-words.ts";

export interface BuyProps {
  readonly answer: Extract<Because, { kind: "buy" }>;
  readonly candidates: number;
  readonly nameOf: (id: string) => string;
}

/** Which one more bottle would help most, and which whiskeys no recipe of the list needs. */
export function Buy({ answer, candidates, nameOf }: BuyProps) {
  const useful = answer.purchases.filter(({ gain }) => gain >= 0.005);
  return (
    <div className="wonder-answer" role="status">
      <h3>
        {useful[0] === undefined
          ? "Nothing you know of and do not have would help"
          : `${nameOf(useful[0].id)} would bring you ${printDistance(useful[0].gain)} closer`}
      </h3>
      {candidates === 0 && (
        <p className="soft small">
          A whiskey can be weighed up once the house knows it, with a profile, and none of it is on the shelf.
        </p>
      )}
      <ul className="impossible-rules">
        {useful.slice(0, 5).map(({ id, gain, recipes }) => (
          <li key={id}>
            <span>
              {nameOf(id)}: <b>{printDistance(gain)} closer</b>
              {recipes[0] !== undefined && recipes[0] !== null && (
                <span className="soft small"> as {partsWords(recipes[0], nameOf)}</span>
              )}
            </span>
          </li>
        ))}
      </ul>
      {answer.neverNeeded.length > 0 && (
        <p>
          In none of the {answer.top} closest: {listed(answer.neverNeeded.map(nameOf))}.
        </p>
      )}
    </div>
  );
}
