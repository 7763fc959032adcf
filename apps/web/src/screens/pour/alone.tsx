import type { Flight } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { Broken, Busy, LinkButton, Page } from "../../parts/index.ts";
import { useToken } from "../../session/index.ts";
import { flightPath, sheetPath } from "../flights/paths.ts";
import type { ScreenProps } from "../screen.ts";
import { TakeForm } from "../sheet/take-sheet.tsx";
import { MarkAndPour } from "./mark-and-pour.tsx";
import { Undersides } from "./undersides.tsx";
import "./pour.css";

/** Tasting alone: mark, pour, mix up, and after the lock look underneath. */
export default function Alone({ params }: ScreenProps) {
  const household = params["household"] ?? "";
  const at = { household, flight: params["flight"] ?? "" };
  const asked = useAsk("getFlight", { at });
  if (asked.state !== "here") {
    return (
      <Page title="Pour alone">
        {asked.state === "busy" ? (
          <Busy what="the flight" />
        ) : (
          <Broken asked={asked} title="The flight could not be fetched" />
        )}
      </Page>
    );
  }
  return <Shown flight={asked.answer} at={at} />;
}

interface AloneProps {
  readonly flight: Flight;
  readonly at: { readonly household: string; readonly flight: string };
}

function Shown({ flight, at }: AloneProps) {
  const sheet = flight.sheets[0];
  const token = useToken("sheet", sheet?.sheetId ?? "");
  if (sheet === undefined || flight.pouring !== "alone") {
    return <Elsewhere at={at} says="This flight is not poured alone." />;
  }
  if (flight.state === "pouring") {
    if (token === undefined && sheet.state === "free") {
      return (
        <Page
          title="First take the sheet"
          back={{ to: flightPath(at.household, flight.id), label: "The flight" }}
          lead={`${flight.name}, poured alone by ${sheet.taster}. The sheet stays on this phone.`}
        >
          <TakeForm flight={flight} taster={sheet.taster} at={{ ...at, sheet: sheet.sheetId }} />
        </Page>
      );
    }
    return token === undefined ? (
      <Elsewhere at={at} says={`${sheet.taster}’s sheet is on another phone; go on there.`} />
    ) : (
      <MarkAndPour flight={flight} at={at} token={token} sheetId={sheet.sheetId} />
    );
  }
  if (flight.state === "tasting" && sheet.state === "locked" && !flight.undersidesEntered) {
    return token === undefined ? (
      <Elsewhere at={at} says={`${sheet.taster}’s sheet is on another phone; enter the marks there.`} />
    ) : (
      <Undersides flight={flight} at={at} token={token} />
    );
  }
  return (
    <Elsewhere
      at={at}
      says={
        flight.state === "tasting" && sheet.state !== "locked"
          ? "The glasses stand at their places. Taste, write and lock the sheet before you look underneath."
          : "Nothing is left to do here."
      }
      {...(flight.state === "tasting" && sheet.state === "open"
        ? { to: sheetPath(at.household, flight.id, sheet.sheetId) }
        : {})}
    />
  );
}

function Elsewhere({
  at,
  says,
  to,
}: {
  readonly at: AloneProps["at"];
  readonly says: string;
  readonly to?: string;
}) {
  return (
    <Page title="Pour alone">
      <section className="state">
        <p>{says}</p>
        <div className="state-actions">
          <LinkButton kind="main" to={to ?? flightPath(at.household, at.flight)}>
            {to === undefined ? "Go to the flight" : "Go to the sheet"}
          </LinkButton>
        </div>
      </section>
    </Page>
  );
}
