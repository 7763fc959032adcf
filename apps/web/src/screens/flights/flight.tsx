import type { Flight, LiveState } from "@partsproof/house/protocol";
import { useEffect } from "react";
import { useAskKept, written } from "../../api.ts";
import { listed, printMoment } from "../../figures/index.ts";
import { forgetSheet } from "../../noting/index.ts";
import { Broken, Busy, OutOfReach, Page, Section } from "../../parts/index.ts";
import { useFlightToken, useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { Asked } from "./asked.tsx";
import { AlcoholNote } from "./alcohol-note.tsx";
import { CallOff } from "./call-off.tsx";
import { countGlasses, stateSentence, waitsFor } from "./flight-state.ts";
import { GlassesAbove } from "./glasses-above.tsx";
import { Joining } from "./joining.tsx";
import { NextStep } from "./next-step.tsx";
import { flightsPath } from "./paths.ts";
import { SheetsOfFlight } from "./sheets-of-flight.tsx";
import { useLive } from "./use-live.ts";
import { useEvery } from "./use-every.ts";
import { TargetMark } from "./target-mark.tsx";
import "./flight.css";
import "./question.css";

/** How often a page that waits for somebody asks again. */
const LOOK_AGAIN_MS = 5000;

/** A flight on the table: who has locked, what is next. It shows nothing of the key. */
export default function FlightPage({ params }: ScreenProps) {
  const household = useHousehold().id;
  const at = { household, flight: params["flight"] ?? "" };
  const asked = useAskKept("getFlight", { at });
  // Called off, or over: words put right on this phone are of no sheet any more.
  const over =
    asked.state === "here" && ["revealed", "called off"].includes(asked.answer.state)
      ? asked.answer.sheets.map(({ sheetId }) => sheetId).join()
      : "";
  useEffect(() => {
    if (over !== "") for (const sheet of over.split(",")) forgetSheet(sheet);
  }, [over]);
  const waits = asked.state === "here" && waitsFor(asked.answer) !== "nothing";
  const { table, on } = useLive(at, useFlightToken(at.flight), () => written());
  useEvery(LOOK_AGAIN_MS, asked.again, waits && !on);
  const back = { to: flightsPath(household), label: "Flights" };
  if (asked.state === "here") {
    return (
      <>
        <OutOfReach refusal={asked.refusal} />
        <Shown flight={asked.answer} household={household} back={back} table={table} />
      </>
    );
  }
  return (
    <Page title="Flight" back={back}>
      {asked.state === "busy" ? (
        <Busy what="the flight" />
      ) : (
        <Broken asked={asked} title="The flight could not be fetched" />
      )}
    </Page>
  );
}

interface ShownProps {
  readonly flight: Flight;
  readonly household: string;
  readonly back: { readonly to: string; readonly label: string };
  readonly table: LiveState | null;
}

function Shown({ flight, household, back, table }: ShownProps) {
  const who = flight.pouring === "alone" ? "poured alone" : `poured by ${flight.pourer ?? "somebody"}`;
  return (
    <Page
      title={flight.name}
      back={back}
      lead={`${countGlasses(flight.glassCount)} of ${flight.pourMl} mL for ${listed(
        flight.sheets.map((sheet) => sheet.taster),
      )}, ${who}.`}
      wide
    >
      <div className="flight">
        <div className="flight-main">
          <div className="flight-mat">
            <GlassesAbove count={flight.glassCount} poured={flight.pouredAt !== null} size="page" />
            <p className="flight-state" aria-live="polite">
              {stateSentence(flight)}
            </p>
            <p className="flight-when">
              Set {printMoment(flight.createdAt)}
              {flight.pouredAt !== null && `, poured ${printMoment(flight.pouredAt)}`}
              {flight.revealedAt !== null && `, revealed ${printMoment(flight.revealedAt)}`}
            </p>
          </div>
          <NextStep flight={flight} household={household} />
          {flight.state !== "called off" && (
            <SheetsOfFlight flight={flight} household={household} table={table} />
          )}
        </div>
        <div className="flight-side">
          <Section title="What is asked">
            <Asked flight={flight} />
          </Section>
          <Section
            title={flight.question === "which_is_which" ? "Names to guess from" : "What may be poured"}
          >
            <ul className="flight-names">
              {flight.namesOnOffer.map((name) => (
                <li key={name.nameId}>
                  <span className="name">{name.label}</span>
                  {name.count > 1 && <span className="flight-count"> {name.count} times</span>}
                  {name.nameId === flight.targetNameId && <TargetMark />}
                </li>
              ))}
            </ul>
            {flight.question === "which_is_which" && (
              <p className="field-hint">Some of them may be in no glass.</p>
            )}
          </Section>
          {waitsFor(flight) !== "nothing" && (
            <Section title="How much alcohol that is">
              <AlcoholNote
                grams={flight.alcoholAtMost.grams}
                pourMl={flight.pourMl}
                glasses={flight.glassCount}
                planning={flight.state === "pouring"}
              />
            </Section>
          )}
          {waitsFor(flight) !== "nothing" && <Joining flight={flight} household={household} />}
          {flight.state === "pouring" && <CallOff flight={flight} household={household} />}
        </div>
      </div>
    </Page>
  );
}
