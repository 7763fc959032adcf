import type { LiveState, Watched } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { Broken, Busy, LinkButton, Page } from "../../parts/index.ts";
import { tokenOf, useFlightToken } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { findingPath, checkPath, revealPath, sheetPath } from "./paths.ts";
import { useEvery } from "./use-every.ts";
import { useLive } from "./use-live.ts";
import { whereWords } from "./where-words.ts";
import "./table.css";

/** While the stream does not stand. */
const LOOK_AGAIN_MS = 5000;

/** Who sits at the table and who has locked. Nothing of what is written or poured. */
export default function Table({ params }: ScreenProps) {
  const at = { household: params["household"] ?? "", flight: params["flight"] ?? "" };
  const token = useFlightToken(at.flight);
  const asked = useAsk("watchFlight", { at, ...(token === undefined ? {} : { token }) });
  const { table, on } = useLive(at, token, () => asked.again());
  const shut = asked.refusal !== null && [401, 403].includes(asked.refusal.status);
  useEvery(LOOK_AGAIN_MS, asked.again, !on && !shut);
  if (asked.state !== "here") {
    return (
      <Page title="The table">
        {asked.state === "busy" ? (
          <Busy what="the table" />
        ) : (
          <Broken asked={asked} title="The table cannot be seen from here" />
        )}
      </Page>
    );
  }
  if (shut) {
    return (
      <Page title="The table">
        <section className="state">
          <h2>The host closed this way in</h2>
          <p>This phone may follow the flight no longer.</p>
        </section>
      </Page>
    );
  }
  return <Shown watched={asked.answer} table={table} at={at} />;
}

const SAID: Readonly<Record<Watched["state"], string>> = {
  pouring: "The glasses are being poured.",
  tasting: "They taste and write.",
  revealed: "The key is open.",
  "called off": "The flight was called off.",
};

interface ShownProps {
  readonly watched: Watched;
  readonly table: LiveState | null;
  readonly at: { readonly household: string; readonly flight: string };
}

function Shown({ watched, table, at }: ShownProps) {
  const mine = table?.seats.find((seat) => tokenOf("sheet", seat.sheetId) !== undefined);
  const locked = watched.seats.filter((seat) => seat.state === "locked").length;
  return (
    <Page
      title={watched.flightName}
      lead={
        watched.state === "tasting" && locked === watched.seats.length
          ? "Everybody has locked. The key can be opened."
          : SAID[watched.state]
      }
    >
      <p aria-live="polite">
        {locked} of {watched.seats.length} {watched.seats.length === 1 ? "sheet" : "sheets"} locked.
      </p>
      <ul className="table-seats">
        {watched.seats.map((seat, i) => {
          const position =
            table?.seats[i]?.taster === seat.taster ? (table.seats[i]?.position ?? null) : null;
          return (
            // oxlint-disable-next-line react/no-array-index-key -- seats never change their order
            <li key={i} className={`table-seat table-seat-${seat.state}`}>
              <span className="name">{seat.taster}</span>
              <span>{seatWords(seat.state, position, watched.layout)}</span>
            </li>
          );
        })}
      </ul>
      <div className="form-actions">
        {mine !== undefined && (
          <LinkButton
            kind={watched.state === "revealed" ? "plain" : "main"}
            to={sheetPath(at.household, at.flight, mine.sheetId)}
          >
            My sheet
          </LinkButton>
        )}
        {watched.state === "revealed" && (
          <>
            <LinkButton kind="main" to={revealPath(at.household, at.flight)}>
              Open the glasses
            </LinkButton>
            <LinkButton to={findingPath(at.household, at.flight)}>Read the finding</LinkButton>
          </>
        )}
        <LinkButton to={checkPath(at.household, at.flight)}>Was anything changed?</LinkButton>
      </div>
    </Page>
  );
}

function seatWords(
  state: Watched["seats"][number]["state"],
  position: number | null,
  layout: Watched["layout"],
): string {
  switch (state) {
    case "free":
      return "seat free";
    case "open":
      return position === null ? "here" : whereWords(position, layout);
    case "locked":
      return "✓ locked";
    case "closed":
      return "closed, not locked";
  }
}
