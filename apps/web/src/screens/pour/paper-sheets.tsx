import { DISCRIMINATION } from "@partsproof/core/sensory";
import { inSets } from "./listed-glass.ts";
import type { PaperProps } from "./paper-mats.tsx";

const NOTES = ["Nose", "Palate", "Finish"];

/** One sheet a taster to write on by hand, in the order in which it is typed in afterwards. */
export function PaperSheets({ flight, tasters }: PaperProps) {
  const { question, design, namesOnOffer } = flight;
  const guesses = question === "which_is_which";
  const lines = [
    ...NOTES,
    ...(design.setsEach === 0 ? ["Second time"] : []),
    ...(guesses ? ["I think it is"] : []),
  ];
  return (
    <>
      {tasters.map(({ taster, glasses }) => (
        <section key={taster} className="papersheet">
          <h2>{taster}</h2>
          <p>
            {flight.name}
            {design.method !== null && (
              <>
                {". "}
                <strong>
                  {design.method === "paired" && design.asked !== null
                    ? `Which of the two is ${design.asked}?`
                    : DISCRIMINATION[design.method].task}
                </strong>
              </>
            )}
          </p>
          {inSets(glasses).map(({ set, glasses: those }) => {
            const coded = those.filter(({ code }) => code !== "R");
            return (
              <div key={set ?? "row"} className="papersheet-set">
                {set !== null && <h3>{design.method === null ? `Round ${set}` : `Set ${set}`}</h3>}
                <table>
                  <thead>
                    <tr>
                      <th scope="col">Glass</th>
                      {lines.map((line) => (
                        <th key={line} scope="col">
                          {line}
                        </th>
                      ))}
                    </tr>
                  </thead>
                  <tbody>
                    {coded.map(({ code }) => (
                      <tr key={code}>
                        <th scope="row">{code}</th>
                        {lines.map((line) => (
                          <td key={line}>{"\u00a0"}</td>
                        ))}
                      </tr>
                    ))}
                  </tbody>
                </table>
                <p className="papersheet-rank">
                  {design.method === null ? (
                    <>
                      {question === "how_close" ? "Closest to the target first" : "Best first"}
                      {question === "agree_with_myself" ? ":" : " (level ones side by side):"}
                      {coded.map(({ code }) => (
                        <span key={code} />
                      ))}
                    </>
                  ) : (
                    <>
                      My answer:
                      <span />
                      {design.method === "tetrad" && <span />}
                    </>
                  )}
                </p>
              </div>
            );
          })}
          {guesses && (
            <p>
              Names to guess from; some may be in no glass:{" "}
              {namesOnOffer
                .map((name) => (name.count > 1 ? `${name.label} (${name.count} times)` : name.label))
                .join("; ")}
              .
            </p>
          )}
          <p>
            Water between the glasses. Spit if you like. Nobody who tastes drives. Legal drinking age only.
          </p>
        </section>
      ))}
    </>
  );
}
