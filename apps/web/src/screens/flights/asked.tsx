import { DISCRIMINATION, QUESTIONS } from "@partsproof/core/sensory";
import type { Flight } from "@partsproof/house/protocol";

/** The flight's question, how it is laid out, and what the layout leaves unbalanced. */
export function Asked({ flight }: { readonly flight: Flight }) {
  const { question, design } = flight;
  const { method, asked, sides, setsEach } = design;
  return (
    <div className="asked">
      <p>
        <strong>{QUESTIONS[question].title}</strong>
        {method === null && <> {QUESTIONS[question].sentence}</>}
      </p>
      {method !== null && (
        <p>
          {DISCRIMINATION[method].title}, {setsEach === 1 ? "1 set" : `${setsEach} sets`} for each taster:{" "}
          {method === "paired" && asked !== null
            ? `Which of the two is ${asked}? ${sides === 1 ? "It was said beforehand, under seal, which has more." : "Either may have more."}`
            : DISCRIMINATION[method].task}
        </p>
      )}
      {design.said.length > 0 && (
        <details className="needs-more">
          <summary>How it is laid out</summary>
          <ul className="needs-list">
            {design.said.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
