import type { Finding } from "@partsproof/house/protocol";
import { useAskKept } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { Broken, Busy, LinkButton, OutOfReach, Page, Section } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useFlightToken } from "../../session/index.ts";
import { countGlasses } from "../flights/flight-state.ts";
import { flightPath, flightsPath, revealPath } from "../flights/paths.ts";
import { drinksDigits, gramsDigits } from "../flights/print-alcohol.ts";
import { ShuffleSeen } from "../flights/shuffle-seen.tsx";
import type { ScreenProps } from "../screen.ts";
import { Agreement } from "./agreement.tsx";
import { Closeness } from "./closeness.tsx";
import { Guesses } from "./guesses.tsx";
import { Headline } from "./headline.tsx";
import { NotesByGlass } from "./notes-by-glass.tsx";
import { Ranks } from "./ranks.tsx";
import { ranksOfGlass } from "./ranked-glasses.ts";
import { Repeats } from "./repeats.tsx";
import { Invented } from "../evidence/invented.tsx";
import { writeUpPath } from "../evidence/paths.ts";
import WeighedSections from "../evidence/weighed-sections.tsx";
import { Say } from "./say.tsx";
import { Sets } from "./sets.tsx";
import "./finding.css";

/** What the glasses said: the headline first, the numbers one tap away, and what was left out. */
export default function FindingPage({ params }: ScreenProps) {
  const household = params["household"] ?? "";
  const flight = params["flight"] ?? "";
  const token = useFlightToken(flight);
  const asked = useAskKept("getFinding", {
    at: { household, flight },
    ...(token === undefined ? {} : { token }),
  });
  const back = { to: `/h/${household}/findings`, label: "Findings" };
  if (asked.state === "here")
    return (
      <>
        <OutOfReach refusal={asked.refusal} />
        <Shown finding={asked.answer} household={household} back={back} />
      </>
    );
  const sealed = asked.state === "broken" && asked.refusal.issues.some(({ code }) => code === "not_revealed");
  return (
    <Page title="Finding" back={back}>
      {asked.state === "busy" && <Busy what="the finding" />}
      {asked.state === "broken" && !sealed && (
        <Broken asked={asked} title="The finding could not be fetched" />
      )}
      {sealed && (
        <section className="state">
          <h2>Nothing is found yet</h2>
          <p>This flight is not revealed.</p>
          <div className="state-actions">
            <LinkButton kind="main" to={flightPath(household, flight)}>
              Go to the flight
            </LinkButton>
          </div>
        </section>
      )}
    </Page>
  );
}

interface ShownProps {
  readonly finding: Finding;
  readonly household: string;
  readonly back: { readonly to: string; readonly label: string };
}

function Shown({ finding, household, back }: ShownProps) {
  const { flight, alcoholPerTaster: alcohol } = finding;
  const tasters = flight.sheets.length;
  return (
    <Page
      title={finding.headline}
      heading={<Headline text={finding.headline} />}
      wide
      back={back}
      lead={
        <>
          <Link to={flightPath(household, flight.id)}>{flight.name}</Link>
          {flight.revealedAt !== null && `, revealed ${printDay(flight.revealedAt)}`}:{" "}
          {countGlasses(flight.glassCount)}, {tasters === 1 ? "1 taster" : `${tasters} tasters`}.
        </>
      }
    >
      <Invented />
      {finding.sets !== null && <Sets found={finding.sets} />}
      {finding.closeness !== null ? (
        <Closeness found={finding.closeness} ranksOf={(glass) => ranksOfGlass(finding, glass)} />
      ) : (
        // Two orders of the same glasses are set against each other, not added up.
        finding.agreement === null && <Ranks finding={finding} />
      )}
      {finding.agreement !== null && <Agreement found={finding.agreement} />}
      <Repeats finding={finding} />
      {flight.question === "which_is_which" && <Guesses finding={finding} />}
      <WeighedSections household={household} flight={flight.id} />
      <Say finding={finding} />
      <ShuffleSeen finding={finding} />
      <Section title="What was left out">
        {finding.leftOut.length === 0 ? (
          <p className="soft">Nothing: every sheet was locked, with all that was asked.</p>
        ) : (
          <ul className="finding-left">
            {finding.leftOut.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </Section>
      <NotesByGlass finding={finding} />
      <Section title="Alcohol poured">
        <p>
          For each taster {gramsDigits(alcohol.grams)} g of pure alcohol in {countGlasses(flight.glassCount)}:{" "}
          {drinksDigits(alcohol.usStandardDrinks)} US standard drinks, {drinksDigits(alcohol.ukUnits)} UK
          units. What was spat or left is not counted.
        </p>
      </Section>
      <div className="form-actions no-paper">
        <LinkButton to={revealPath(household, flight.id)}>See the glasses opened again</LinkButton>
        <LinkButton to={writeUpPath(household, flight.id)}>Write-up to print or pass on</LinkButton>
        <LinkButton to={flightsPath(household)}>Set the next flight</LinkButton>
      </div>
    </Page>
  );
}
