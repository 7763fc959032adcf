import type { Flight } from "@partsproof/house/protocol";
import { CheckRuler } from "../../print/check-ruler.tsx";
import { inSets } from "./listed-glass.ts";

export interface PaperProps {
  readonly flight: Pick<Flight, "name" | "namesOnOffer" | "pourMl" | "question" | "design">;
  readonly tasters: readonly {
    readonly taster: string;
    /** In the order to taste. */
    readonly glasses: readonly { readonly code: string; readonly set: number | null }[];
  }[];
}

/** One mat a taster: a ring of 50 mm to stand each glass in, with its number, in the order to taste. */
export function PaperMats({ flight, tasters }: PaperProps) {
  return (
    <>
      {tasters.map(({ taster, glasses }) => (
        <section key={taster} className="papermat">
          <h2>{taster}</h2>
          <p>{flight.name}. Taste from left to right, row by row.</p>
          {inSets(glasses).map(({ set, glasses: those }) => (
            <div key={set ?? "row"} className="papermat-set">
              {set !== null && <h3>Set {set}</h3>}
              <ol>
                {those.map(({ code }) => (
                  <li key={code}>
                    <span className="papermat-ring" />
                    <span className="papermat-code">{code}</span>
                  </li>
                ))}
              </ol>
            </div>
          ))}
          <p>Water between the glasses. Spit if you like. Nobody who tastes drives.</p>
          <CheckRuler />
        </section>
      ))}
    </>
  );
}
