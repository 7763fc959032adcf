import type { PaperProps } from "./paper-mats.tsx";

const LINES = ["Nose", "Palate", "Finish", "Second time", "I think it is"];

/** One sheet a taster to write on by hand. */
export function PaperSheets({ flight, tasters }: PaperProps) {
  return (
    <>
      {tasters.map(({ taster, codes }) => (
        <section key={taster} className="papersheet">
          <h2>{taster}</h2>
          <p>{flight.name}</p>
          <table>
            <thead>
              <tr>
                <th scope="col">Glass</th>
                {LINES.map((line) => (
                  <th key={line} scope="col">
                    {line}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {codes.map((code) => (
                <tr key={code}>
                  <th scope="row">{code}</th>
                  {LINES.map((line) => (
                    <td key={line}>{"\u00a0"}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
          <p className="papersheet-rank">
            Best first (level ones side by side):
            {codes.map((code) => (
              <span key={code} />
            ))}
          </p>
          <p>
            Names to guess from; some may be in no glass:{" "}
            {flight.namesOnOffer
              .map((name) => (name.count > 1 ? `${name.label} (${name.count} times)` : name.label))
              .join("; ")}
            .
          </p>
          <p>Water between the glasses. Spit if you like. Nobody who tastes drives.</p>
        </section>
      ))}
    </>
  );
}
