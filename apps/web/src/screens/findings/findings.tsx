import { useAskAll } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { Broken, Busy, Empty, LinkButton, Page } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { countGlasses } from "../flights/flight-state.ts";
import { findingPath, flightsPath } from "../flights/paths.ts";
import { AcrossFlights } from "../evidence/across-flights.tsx";
import { Invented } from "../evidence/invented.tsx";
import { Headline } from "./headline.tsx";
import "./findings.css";

/** What every revealed flight said, newest first. */
export default function Findings() {
  const household = useHousehold().id;
  const findings = useAskAll("listFindings", { at: { household } });
  return (
    <Page title="Findings" lead="What the glasses said, and how much of it could be luck.">
      <Invented />
      {findings.state === "busy" && <Busy what="the findings" />}
      {findings.state === "broken" && <Broken asked={findings} title="The findings could not be fetched" />}
      {findings.state === "here" && findings.answer.length === 0 && (
        <Empty
          title="Nothing is found yet"
          action={
            <LinkButton kind="main" to={flightsPath(household)}>
              Go to the flights
            </LinkButton>
          }
        >
          <p>A finding comes of a flight that was tasted blind and revealed.</p>
        </Empty>
      )}
      {findings.state === "here" && findings.answer.length > 0 && (
        <ol className="findings">
          {findings.answer.map((line) => (
            <li key={line.flightId}>
              <Link to={findingPath(household, line.flightId)} className="findings-one">
                <span className="findings-headline">
                  <Headline text={line.headline} />
                </span>
                <span className="findings-facts">
                  {line.name} · {printDay(line.revealedAt)} · {countGlasses(line.glasses)},{" "}
                  {line.tasters === 1 ? "1 taster" : `${line.tasters} tasters`}
                </span>
              </Link>
            </li>
          ))}
        </ol>
      )}
      {findings.state === "here" && findings.answer.length > 0 && <AcrossFlights household={household} />}
      <p>
        <Link to="/counts">Numbers from elsewhere</Link>: rankings, comparisons, mixtures and right answers in
        a file or typed in, and <Link to="/counts?of=could-show">what chosen numbers could show</Link> before
        a flight.
      </p>
    </Page>
  );
}
