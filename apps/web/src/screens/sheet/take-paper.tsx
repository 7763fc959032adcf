import type { Flight } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Form, Page, TextField, Tick } from "../../parts/index.ts";
import { keep, keepToken, kept } from "../../session/index.ts";
import { flightPath, paperKey } from "../flights/paths.ts";
import type { PaperAt } from "./paper-at.ts";

/** Whoever typed the last sheet on this device probably types the next. */
const TYPIST = "typist";

interface TakePaperProps {
  readonly flight: Flight;
  readonly taster: string;
  readonly at: PaperAt;
}

/** Before a paper sheet is typed in: who types it, and that its taster is of age. */
export function TakePaper({ flight, taster, at }: TakePaperProps) {
  const [typist, setTypist] = useState(kept(TYPIST) ?? "");
  const [ofAge, setOfAge] = useState(false);
  const say = useSay("takeSheet");
  const take = async (): Promise<void> => {
    const missing = [
      ...(typist.trim() === "" ? [{ field: "typist", limit: "the name of who types it" }] : []),
      ...(ofAge ? [] : [{ field: "ofLegalAge", limit: `${taster}’s word on legal drinking age` }]),
    ];
    if (missing.length > 0) {
      say.refuse(
        missing.map(({ field, limit }) => ({
          code: `${field}_missing`,
          path: [field],
          limit,
          received: null,
          message: `typing in a sheet requires ${limit}, got none`,
        })),
      );
      return;
    }
    const taken = await say.send({ at, body: { ofLegalAge: true } });
    if (taken === null) return;
    keep(TYPIST, typist.trim());
    keep(paperKey(at.sheet), typist.trim());
    keepToken("sheet", at.sheet, taken.token);
  };
  return (
    <Page
      title={`${taster}’s paper sheet`}
      lead={`${flight.name}. You type what ${taster} wrote; it counts as ${taster}’s own.`}
      back={{ to: flightPath(at.household, at.flight), label: "The flight" }}
    >
      <Form say={say} onSend={() => void take()}>
        <TextField
          label="Who types it"
          path={["typist"]}
          value={typist}
          onChange={setTypist}
          hint="Stands with every entry, where everybody reads it after the reveal."
          input={{ maxLength: 80 }}
        />
        <Tick
          label={`${taster} has said to be of legal drinking age.`}
          path={["ofLegalAge"]}
          value={ofAge}
          onChange={setOfAge}
        />
        <div>
          <Button kind="main" type="submit" busy={say.busy}>
            Type it in
          </Button>
        </div>
      </Form>
    </Page>
  );
}
