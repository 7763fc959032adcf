import type { Flight } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { useAsk } from "../../api.ts";
import { Broken, Busy, Button, LinkButton, Page } from "../../parts/index.ts";
import { keepToken, tokenOf, useFlightToken, useToken } from "../../session/index.ts";
import { findingPath, flightPath } from "../flights/paths.ts";
import { useEvery } from "../flights/use-every.ts";
import type { ScreenProps } from "../screen.ts";
import { PourSheet } from "./pour-sheet.tsx";
import { tokenInAddress } from "./token-in-address.ts";
import "./pour.css";

const LOOK_AGAIN_MS = 5000;

/** The pourer's page: what goes into which glass. It stays covered until the pourer says who they are. */
export default function Pour({ params }: ScreenProps) {
  const household = params["household"] ?? "";
  const at = { household, flight: params["flight"] ?? "" };
  useEffect(() => {
    const token = tokenInAddress(location.hash);
    if (token === null) return;
    keepToken("pourer", at.flight, token);
    // Out of the address bar, so that nobody reads or shares it by accident.
    history.replaceState(null, "", location.pathname + location.search);
  }, [at.flight]);
  const token = useFlightToken(at.flight);
  const asked = useAsk("getFlight", { at, ...(token === undefined ? {} : { token }) });
  useEvery(LOOK_AGAIN_MS, asked.again, asked.state === "here");
  if (asked.state !== "here") {
    return (
      <Page title="The pourer’s page">
        {asked.state === "busy" ? (
          <Busy what="the flight" />
        ) : (
          <Broken asked={asked} title="The flight could not be fetched" />
        )}
      </Page>
    );
  }
  return <Covered flight={asked.answer} at={at} />;
}

interface CoveredProps {
  readonly flight: Flight;
  readonly at: { readonly household: string; readonly flight: string };
}

function Covered({ flight, at }: CoveredProps) {
  const token = useToken("pourer", flight.id);
  const [shown, setShown] = useState(false);
  const pourer = flight.pourer ?? "the pourer";
  if (flight.pouring === "alone") {
    return <Shut title="Nobody else pours this flight" at={at} says="It is poured alone." />;
  }
  if (flight.state === "called off") {
    return <Shut title="This flight was called off" at={at} says="Pour nothing: its key is destroyed." />;
  }
  if (flight.state === "revealed") {
    return (
      <Shut
        title="The list is closed"
        at={at}
        says="The flight is revealed; what was in the glasses stands in the finding now."
        finding
      />
    );
  }
  if (token === undefined && flight.state === "tasting") {
    return (
      <Shut
        title="The glasses stand ready"
        at={at}
        says="The list is not on this device (any more): tasters use it too. The link opens it again until the reveal."
      />
    );
  }
  if (token === undefined) {
    return (
      <Shut
        title="This page needs the pourer’s link"
        at={at}
        says={`The whole link, with what stands behind the #. Whoever set the flight hands it to ${pourer}.`}
      />
    );
  }
  if (shown) return <PourSheet flight={flight} at={at} token={token} />;
  const tasters = flight.sheets.filter((sheet) => tokenOf("sheet", sheet.sheetId) !== undefined);
  return (
    <Page title="The pourer’s page" lead={flight.name}>
      <section className="cover">
        <h2>Behind this stands the key</h2>
        <p>
          It says what goes into every glass. It is for {pourer}, who{" "}
          <strong>tastes nothing of this flight</strong> and tells nobody until the reveal.
        </p>
        {tasters.length > 0 && (
          <p className="cover-stop">
            This phone also holds {tasters.map((sheet) => `${sheet.taster}’s`).join(" and ")} sheet. Whoever
            tastes must not look: open the link on {pourer}’s phone.
          </p>
        )}
        <div className="form-actions">
          <Button kind={tasters.length > 0 ? "danger" : "main"} onClick={() => setShown(true)}>
            I am {pourer} and taste nothing: show it
          </Button>
          <LinkButton to={flightPath(at.household, flight.id)}>Not me</LinkButton>
        </div>
      </section>
    </Page>
  );
}

interface ShutProps {
  readonly title: string;
  readonly says: string;
  readonly at: CoveredProps["at"];
  readonly finding?: boolean;
}

function Shut({ title, says, at, finding = false }: ShutProps) {
  return (
    <Page title="The pourer’s page">
      <section className="state">
        <h2>{title}</h2>
        <p>{says}</p>
        <div className="state-actions">
          <LinkButton
            kind="main"
            to={finding ? findingPath(at.household, at.flight) : flightPath(at.household, at.flight)}
          >
            {finding ? "Read the finding" : "Go to the flight"}
          </LinkButton>
        </div>
      </section>
    </Page>
  );
}
