import type { Flight, Sheet } from "@partsproof/house/protocol";
import { useAsk, written } from "../../api.ts";
import { Broken, Busy, Button, LinkButton, Page } from "../../parts/index.ts";
import { keepToken, useFlightToken, useToken } from "../../session/index.ts";
import { flightPath } from "../flights/paths.ts";
import { useLive } from "../flights/use-live.ts";
import { usePromise } from "../flights/use-promise.ts";
import { useEvery } from "../flights/use-every.ts";
import type { ScreenProps } from "../screen.ts";
import { ReadSheet } from "./read-sheet.tsx";
import { TakeSheet } from "./take-sheet.tsx";
import { useKeptSheet } from "./use-kept-sheet.ts";
import { WaitToPour } from "./wait-to-pour.tsx";
import { WriteSheet } from "./write-sheet.tsx";
import "./sheet.css";

const LOOK_AGAIN_MS = 5000;

/** A taster's sheet: taken, written, locked, read. Nothing of the key is ever on it. */
export default function SheetPage({ params }: ScreenProps) {
  const household = params["household"] ?? "";
  const at = { household, flight: params["flight"] ?? "", sheet: params["sheet"] ?? "" };
  const token = useToken("sheet", at.sheet);
  return token === undefined ? <WithoutToken at={at} /> : <WithToken key={token} at={at} token={token} />;
}

interface At {
  readonly [name: string]: string;
  readonly household: string;
  readonly flight: string;
  readonly sheet: string;
}

function WithToken({ at, token }: { readonly at: At; readonly token: string }) {
  const asked = useAsk("getSheet", { at, token });
  const sheet = useKeptSheet(at.sheet, asked.answer, asked.refusal);
  const here = sheet !== null;
  const { on } = useLive(at, token, (message) => {
    // Where somebody else is with their glasses changes nothing on this page.
    if (message.kind === "state" || message.what !== "at a glass") written();
  });
  const shut = asked.refusal !== null && [401, 403].includes(asked.refusal.status);
  useEvery(LOOK_AGAIN_MS, asked.again, here && sheet.flightState !== "revealed" && !on && !shut);
  usePromise(at, token);
  if (!here) {
    return (
      <Page title="A taster’s sheet">
        {asked.state === "busy" ? <Busy what="the sheet" /> : <ShutOut asked={asked} at={at} />}
      </Page>
    );
  }
  // The house no longer takes this phone's word: the sheet was handed on.
  if (asked.refusal !== null && [401, 403].includes(asked.refusal.status)) {
    return (
      <Page title="A taster’s sheet">
        <ShutOut asked={asked} at={at} />
      </Page>
    );
  }
  return <Taken sheet={sheet} household={at.household} token={token} again={asked.again} />;
}

interface TakenProps {
  readonly sheet: Sheet;
  readonly household: string;
  readonly token: string;
  readonly again: () => void;
}

function Taken({ sheet, household, token, again }: TakenProps) {
  if (sheet.state === "open" && sheet.flightState === "pouring") {
    return <WaitToPour sheet={sheet} household={household} />;
  }
  if (sheet.state === "open" && sheet.flightState === "tasting") {
    return <WriteSheet sheet={sheet} household={household} token={token} onLocked={again} />;
  }
  return <ReadSheet sheet={sheet} household={household} />;
}

function ShutOut({ asked, at }: { readonly asked: Parameters<typeof Broken>[0]["asked"]; readonly at: At }) {
  if (asked.refusal?.status !== 403) return <Broken asked={asked} title="The sheet could not be fetched" />;
  return (
    <section className="state">
      <h2>This sheet went to another phone</h2>
      <p>
        The host freed it, so this phone can no longer write on it. What was saved from here is still on it.
      </p>
      <div className="state-actions">
        <Button kind="main" onClick={() => keepToken("sheet", at.sheet, null)}>
          Forget it here
        </Button>
        <LinkButton to={flightPath(at.household, at.flight)}>The flight</LinkButton>
      </div>
    </section>
  );
}

function WithoutToken({ at }: { readonly at: At }) {
  const token = useFlightToken(at.flight);
  const asked = useAsk("getFlight", {
    at: { household: at.household, flight: at.flight },
    ...(token === undefined ? {} : { token }),
  });
  useEvery(LOOK_AGAIN_MS, asked.again, asked.state === "here");
  if (asked.state !== "here") {
    return (
      <Page title="A taster’s sheet">
        {asked.state === "busy" ? (
          <Busy what="the sheet" />
        ) : (
          <Broken asked={asked} title="The sheet could not be fetched" />
        )}
      </Page>
    );
  }
  const flight: Flight = asked.answer;
  const line = flight.sheets.find((sheet) => sheet.sheetId === at.sheet);
  if (line === undefined) return <Elsewhere at={at} title="There is no such sheet in this flight" />;
  if (flight.state === "revealed") return <ReadRevealed at={at} />;
  if (flight.state === "called off") return <Elsewhere at={at} title="This flight was called off" />;
  if (line.state === "free") {
    return <TakeSheet flight={flight} taster={line.taster} at={at} />;
  }
  return (
    <Elsewhere
      at={at}
      title={`${line.taster}’s sheet is ${line.state === "locked" ? "locked" : "on another phone"}`}
    >
      {line.state === "locked"
        ? "It can be read by everybody after the reveal."
        : "Only that phone can write on it. The host can hand it on from the flight’s page."}
    </Elsewhere>
  );
}

function ReadRevealed({ at }: { readonly at: At }) {
  const token = useFlightToken(at.flight);
  const asked = useAsk("getSheet", { at, ...(token === undefined ? {} : { token }) });
  if (asked.state === "here") return <ReadSheet sheet={asked.answer} household={at.household} />;
  return (
    <Page title="A taster’s sheet">
      {asked.state === "busy" ? (
        <Busy what="the sheet" />
      ) : (
        <Broken asked={asked} title="The sheet could not be fetched" />
      )}
    </Page>
  );
}

function Elsewhere({
  at,
  title,
  children,
}: {
  readonly at: At;
  readonly title: string;
  readonly children?: string;
}) {
  return (
    <Page title="A taster’s sheet">
      <section className="state">
        <h2>{title}</h2>
        {children !== undefined && <p>{children}</p>}
        <div className="state-actions">
          <LinkButton kind="main" to={flightPath(at.household, at.flight)}>
            Go to the flight
          </LinkButton>
        </div>
      </section>
    </Page>
  );
}
