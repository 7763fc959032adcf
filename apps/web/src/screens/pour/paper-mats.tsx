import type { Flight } from "@partsproof/house/protocol";

export interface PaperProps {
  readonly flight: Pick<Flight, "name" | "namesOnOffer" | "pourMl">;
  readonly tasters: readonly { readonly taster: string; readonly codes: readonly string[] }[];
}

/** One mat a taster: a circle to stand each glass in, with its number, in the order to taste. */
export function PaperMats({ flight, tasters }: PaperProps) {
  return (
    <>
      {tasters.map(({ taster, codes }) => (
        <section key={taster} className="papermat">
          <h2>{taster}</h2>
          <p>{flight.name}. Taste from left to right, row by row.</p>
          <ol>
            {codes.map((code) => (
              <li key={code}>
                <span className="papermat-ring" />
                <span className="papermat-code">{code}</span>
              </li>
            ))}
          </ol>
          <p>Water between the glasses. Spit if you like. Nobody who tastes drives.</p>
        </section>
      ))}
    </>
  );
}
