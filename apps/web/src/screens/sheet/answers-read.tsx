import type { Sheet } from "@partsproof/house/protocol";
import { type Fields, pickedIn, roundIn } from "./sheet-fields.ts";

interface AnswersReadProps {
  readonly sheet: Pick<Sheet, "sets" | "asks">;
  readonly fields: Fields;
}

/** Each set with its glasses as they stood, the picked ones marked, or each round with its order. */
export function AnswersRead({ sheet, fields }: AnswersReadProps) {
  return (
    <ol className="answers">
      {sheet.sets.map(({ set, glasses, reference }) => {
        const picked = pickedIn(fields, set);
        const order = roundIn(fields, set);
        return (
          <li key={set}>
            <span className="answers-set">
              {sheet.asks.answers === "ranking" ? "Round" : "Set"} <b>{set}</b>
            </span>
            {order !== null ? (
              <span className="answers-row">{order.flat().join(", then ")}</span>
            ) : (
              <span className="answers-row">
                {reference && <span>R</span>}
                {glasses.map(({ code }) => (
                  <span key={code} className={picked.includes(code) ? "answers-picked" : ""}>
                    {code}
                    {picked.includes(code) && <span className="unseen"> picked</span>}
                  </span>
                ))}
                {picked.length === 0 && <em>no answer</em>}
              </span>
            )}
          </li>
        );
      })}
    </ol>
  );
}
