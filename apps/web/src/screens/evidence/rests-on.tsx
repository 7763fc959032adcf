import type { RecipeFinding } from "@partsproof/house/protocol";
import { printDay } from "../../figures/index.ts";
import { Section } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { findingPath } from "../flights/paths.ts";

/** The flights a page rests on, each with its own finding. */
export function RestsOn({
  flights,
  household,
}: {
  readonly flights: RecipeFinding["flights"];
  readonly household: string;
}) {
  return (
    <Section title="What this rests on">
      {flights.length === 0 ? (
        <p className="soft">
          No revealed flight yet. A finding comes of a flight that was tasted blind and revealed.
        </p>
      ) : (
        <ul className="evidence-flights">
          {flights.map(({ flightId, name, revealedAt, sheets }) => (
            <li key={flightId}>
              <Link to={findingPath(household, flightId)}>
                {name}, {printDay(revealedAt)}, {sheets === 1 ? "1 sheet" : `${sheets} sheets`}
              </Link>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}
