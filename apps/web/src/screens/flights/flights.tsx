import type { Flight } from "@partsproof/house/protocol";
import { useAskAll } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { Broken, Busy, Empty, LinkButton, Page, Section } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { countGlasses, stateSentence, stateWord, waitsFor } from "./flight-state.ts";
import { GlassesAbove } from "./glasses-above.tsx";
import { flightPath, newFlightPath } from "./paths.ts";
import "./flights.css";

/** All flights: first those that wait for somebody, then the finished ones. */
export default function Flights() {
  const household = useHousehold().id;
  const flights = useAskAll("listFlights", { at: { household } });
  return (
    <Page
      title="Flights"
      lead="Glasses tasted together, their key sealed until everybody has written down what they think."
      actions={
        <LinkButton kind="main" to={newFlightPath(household)}>
          Set a flight
        </LinkButton>
      }
    >
      {flights.state === "busy" && <Busy what="the flights" />}
      {flights.state === "broken" && <Broken asked={flights} title="The flights could not be fetched" />}
      {flights.state === "here" && <Lists flights={flights.answer} household={household} />}
    </Page>
  );
}

function Lists({ flights, household }: { readonly flights: readonly Flight[]; readonly household: string }) {
  if (flights.length === 0) {
    return (
      <Empty
        title="No flight has been set"
        action={
          <LinkButton kind="main" to={newFlightPath(household)}>
            Set the first flight
          </LinkButton>
        }
      >
        <p>
          Choose what goes in the glasses. The house draws the numbers and the order, and keeps the key shut
          until the reveal.
        </p>
      </Empty>
    );
  }
  const waiting = flights.filter((flight) => waitsFor(flight) !== "nothing");
  const done = flights.filter((flight) => waitsFor(flight) === "nothing");
  return (
    <>
      {waiting.length > 0 && (
        <Section title="On the table">
          <FlightList flights={waiting} household={household} />
        </Section>
      )}
      {done.length > 0 && (
        <Section title="Done">
          <FlightList flights={done} household={household} />
        </Section>
      )}
    </>
  );
}

function FlightList({
  flights,
  household,
}: {
  readonly flights: readonly Flight[];
  readonly household: string;
}) {
  return (
    <ul className="flights">
      {flights.map((flight) => (
        <li key={flight.id}>
          <Link to={flightPath(household, flight.id)} className="flights-one">
            <span className="flights-head">
              <span className="name">{flight.name}</span>
              <span className="flights-state">{stateWord(flight)}</span>
            </span>
            <GlassesAbove count={flight.glassCount} poured={flight.pouredAt !== null} />
            {waitsFor(flight) !== "nothing" && <span className="flights-say">{stateSentence(flight)}</span>}
            <span className="flights-facts">
              {countGlasses(flight.glassCount)} · {flight.sheets.map((sheet) => sheet.taster).join(", ")} ·{" "}
              {printDay(flight.createdAt)}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
