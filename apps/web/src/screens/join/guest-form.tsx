import type { Joined, JoinShown, Ticket } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Form, Page, SelectField, TextField, Tick } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { keepToken } from "../../session/index.ts";
import { AlcoholNote } from "../flights/alcohol-note.tsx";
import { countGlasses } from "../flights/flight-state.ts";
import { pourPath, sheetPath, tablePath } from "../flights/paths.ts";
import { keyFor } from "./ticket.ts";

interface GuestFormProps {
  readonly ticket: Ticket;
  readonly shown: JoinShown;
}

const AS = {
  taster: "You taste, and write on this phone what you smell, taste and guess.",
  watcher: "You watch who has locked. Nothing of the glasses, notes or guesses is shown to you.",
  pourer: "You pour, see the key, and taste nothing of this flight.",
} as const;

/** Who comes, as what, and their word on their age. */
export function GuestForm({ ticket, shown }: GuestFormProps) {
  const [name, setName] = useState("");
  const [sheetId, setSheetId] = useState("");
  const [ofLegalAge, setOfLegalAge] = useState(false);
  const say = useSay("join");
  const named = shown.seats.filter((seat) => seat.named);
  const open = shown.seats.some((seat) => !seat.named);
  const needsSeat = shown.role === "taster" && !open;
  const join = async (): Promise<void> => {
    if (!ofLegalAge) {
      const limit = "your word on legal drinking age";
      const message = `joining requires ${limit}, got none`;
      say.refuse([{ code: "age_unsaid", path: ["ofLegalAge"], limit, received: false, message }]);
      return;
    }
    const seat = named.find((one) => one.sheetId === sheetId) ?? (needsSeat ? named[0] : undefined);
    const body = { ticket, key: keyFor(ticket), name: seat?.taster ?? name, ofLegalAge };
    const joined = await say.send({ body: { ...body, sheetId: seat?.sheetId ?? null } });
    if (joined !== null) enter(joined);
  };
  return (
    <Page
      title={shown.flightName}
      lead={`${countGlasses(shown.glassCount)} of ${shown.pourMl} mL, tasted blind. ${AS[shown.role]}`}
    >
      {shown.role === "taster" && shown.seats.length === 0 ? (
        <p role="alert">No seat is free any more. Ask the host for another.</p>
      ) : (
        <Form say={say} onSend={() => void join()}>
          {named.length > 0 && (
            <SelectField
              label="Your seat"
              path={["sheetId"]}
              value={sheetId === "" && needsSeat ? (named[0]?.sheetId ?? "") : sheetId}
              onChange={setSheetId}
              options={
                <>
                  {open && <option value="">A guest’s seat</option>}
                  {named.map((seat) => (
                    <option key={seat.sheetId} value={seat.sheetId}>
                      I am {seat.taster}
                    </option>
                  ))}
                </>
              }
            />
          )}
          {sheetId === "" && !needsSeat && (
            <TextField
              label="What they call you"
              path={["name"]}
              value={name}
              onChange={setName}
              hint="A nickname does. Everybody at this table sees it; no account is made."
              input={{ maxLength: 40, autoComplete: "nickname" }}
            />
          )}
          {shown.role === "taster" && (
            <AlcoholNote grams={shown.alcoholAtMost.grams} pourMl={shown.pourMl} glasses={shown.glassCount} />
          )}
          <Tick
            label="I am of legal drinking age where I am."
            path={["ofLegalAge"]}
            value={ofLegalAge}
            onChange={setOfLegalAge}
          />
          <div className="form-actions">
            <Button kind="main" type="submit" busy={say.busy}>
              {shown.role === "taster" ? "Take my seat" : shown.role === "watcher" ? "Watch" : "I pour"}
            </Button>
          </div>
        </Form>
      )}
    </Page>
  );
}

/** Keeps the token, which opens this flight in this role and nothing else, and goes where it leads. */
function enter({ householdId, flightId, token, sheet, role }: Joined): void {
  keepToken("guest", flightId, token);
  if (sheet !== null) keepToken("sheet", sheet.id, token);
  if (role === "pourer") keepToken("pourer", flightId, token);
  const to =
    sheet !== null
      ? sheetPath(householdId, flightId, sheet.id)
      : role === "pourer"
        ? pourPath(householdId, flightId)
        : tablePath(householdId, flightId);
  go(to, { replace: true });
}
