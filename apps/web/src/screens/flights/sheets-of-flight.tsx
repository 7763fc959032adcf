import type { Flight, LiveState } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { printMoment } from "../../figures/index.ts";
import { announce, Button, Dialog, IssueSummary, LinkButton, Section } from "../../parts/index.ts";
import { kept, useToken } from "../../session/index.ts";
import { alonePath, paperKey, sheetPath, typeInPath } from "./paths.ts";
import { whereWords } from "./where-words.ts";
import { ShareLink } from "./share-link.tsx";

type FlightSheet = Flight["sheets"][number];

const stateOf = (sheet: FlightSheet): string => {
  switch (sheet.state) {
    case "free":
      return "not taken yet";
    case "open":
      return "being written";
    case "locked":
      return sheet.lockedAt === null ? "locked" : `locked ${printMoment(sheet.lockedAt)}`;
    case "closed":
      return "closed by the reveal, not locked";
  }
};

/** Each taster's sheet: how far it is, and the way to it. */
export function SheetsOfFlight({
  flight,
  household,
  table,
}: {
  readonly flight: Flight;
  readonly household: string;
  readonly table: LiveState | null;
}) {
  return (
    <Section title={flight.sheets.length === 1 ? "The sheet" : "The sheets"}>
      <ul className="flight-sheets">
        {flight.sheets.map((sheet) => (
          <OneSheet
            key={sheet.sheetId}
            position={table?.seats.find((seat) => seat.sheetId === sheet.sheetId)?.position ?? null}
            sheet={sheet}
            flight={flight}
            household={household}
          />
        ))}
      </ul>
    </Section>
  );
}

interface OneSheetProps {
  readonly sheet: FlightSheet;
  readonly flight: Flight;
  readonly household: string;
}

function OneSheet({
  sheet,
  flight,
  household,
  position,
}: OneSheetProps & { readonly position: number | null }) {
  const mine = useToken("sheet", sheet.sheetId) !== undefined;
  const typed = mine && kept(paperKey(sheet.sheetId)) !== null;
  const [sharing, setSharing] = useState(false);
  const locked = sheet.state === "locked" || sheet.state === "closed";
  const alone = flight.pouring === "alone";
  const path = sheetPath(household, flight.id, sheet.sheetId);
  return (
    <li className={`flight-sheet flight-sheet-${sheet.state}`}>
      <div className="flight-sheet-words">
        <p className="name">{sheet.taster}</p>
        <p className="flight-sheet-state">
          <span aria-hidden="true">{locked ? "▣" : sheet.state === "open" ? "◩" : "▢"}</span> {stateOf(sheet)}
          {position !== null && `, ${whereWords(position, flight.design)}`}
          {mine && !locked && ", on this phone"}
        </p>
      </div>
      <div className="flight-sheet-do">
        {(mine || sheet.state === "free" || flight.state === "revealed") && (
          <LinkButton
            to={alone && flight.state === "pouring" ? alonePath(household, flight.id) : path}
            kind={mine && !locked ? "main" : "plain"}
          >
            {sheet.state === "free" ? "Take it here" : locked ? "Read" : "Write"}
            <span className="unseen"> {sheet.taster}’s sheet</span>
          </LinkButton>
        )}
        {!alone && sheet.state === "free" && (
          <Button onClick={() => setSharing(true)}>
            Hand over<span className="unseen"> {sheet.taster}’s sheet</span>
          </Button>
        )}
        {!alone && flight.state === "tasting" && (sheet.state === "free" || (typed && !locked)) && (
          <LinkButton to={typeInPath(household, flight.id, sheet.sheetId)}>
            Type in paper<span className="unseen">: {sheet.taster}’s sheet</span>
          </LinkButton>
        )}
        {sheet.state === "open" && <FreeSheet sheet={sheet} flight={flight} household={household} />}
      </div>
      <Dialog title={`${sheet.taster}’s sheet`} open={sharing} onClose={() => setSharing(false)}>
        <p>{sheet.taster} opens this link on their own phone and takes the sheet there.</p>
        <ShareLink label={`${sheet.taster}’s sheet`} path={path} />
      </Dialog>
    </li>
  );
}

/** Hands a sheet to another phone; what is written on it stays, the old phone is shut out. */
function FreeSheet({ sheet, flight, household }: OneSheetProps) {
  const token = useToken("host", flight.id);
  const [asking, setAsking] = useState(false);
  const say = useSay("freeSheet");
  if (token === undefined) return null;
  const free = async (): Promise<void> => {
    const at = { household, flight: flight.id, sheet: sheet.sheetId };
    const done = await say.send({ at, token });
    if (done === null) return;
    setAsking(false);
    announce(`${sheet.taster}’s sheet is free to be taken`);
  };
  return (
    <>
      <Button onClick={() => setAsking(true)}>
        Other phone<span className="unseen"> for {sheet.taster}</span>
      </Button>
      <Dialog
        title={`${sheet.taster}’s sheet on another phone`}
        open={asking}
        onClose={() => setAsking(false)}
        alert
      >
        <IssueSummary say={say} />
        <p>
          The phone that has the sheet now can write on it no longer. What is written stays, and the sheet can
          be taken on another phone.
        </p>
        <div className="form-actions">
          <Button kind="main" busy={say.busy} onClick={() => void free()}>
            Free the sheet
          </Button>
          <Button onClick={() => setAsking(false)}>Leave it</Button>
        </div>
      </Dialog>
    </>
  );
}
