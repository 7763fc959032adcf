import type { Flight } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Form, Page, Tick } from "../../parts/index.ts";
import { keepToken } from "../../session/index.ts";
import { AlcoholNote } from "../flights/alcohol-note.tsx";
import { countGlasses } from "../flights/flight-state.ts";

export interface TakeSheetProps {
  readonly flight: Flight;
  readonly taster: string;
  readonly at: { readonly household: string; readonly flight: string; readonly sheet: string };
  readonly onTaken?: () => void;
}

/** Before the first glass: whose sheet it is, what the evening holds, and the taster's word on their age. */
export function TakeSheet({ flight, taster, at, onTaken }: TakeSheetProps) {
  return (
    <Page
      title={`${taster}’s sheet`}
      lead={`${flight.name}: ${countGlasses(flight.glassCount)} of ${flight.pourMl} mL, tasted blind. On this phone you write what you smell, taste and guess.`}
    >
      <TakeForm flight={flight} taster={taster} at={at} {...(onTaken === undefined ? {} : { onTaken })} />
    </Page>
  );
}

export function TakeForm({ flight, taster, at, onTaken }: TakeSheetProps) {
  const [ofAge, setOfAge] = useState(false);
  const say = useSay("takeSheet");
  const take = async (): Promise<void> => {
    if (!ofAge) {
      const limit = "the taster’s word on legal drinking age";
      const message = `taking a sheet requires ${limit}, got none`;
      say.refuse([{ code: "age_unsaid", path: ["ofLegalAge"], limit, received: false, message }]);
      return;
    }
    const taken = await say.send({ at, body: { ofLegalAge: true } });
    if (taken === null) return;
    keepToken("sheet", at.sheet, taken.token);
    onTaken?.();
  };
  return (
    <Form say={say} onSend={() => void take()}>
      <AlcoholNote grams={flight.alcoholAtMost.grams} pourMl={flight.pourMl} glasses={flight.glassCount} />
      <Tick
        label="I am of legal drinking age where I am."
        path={["ofLegalAge"]}
        value={ofAge}
        onChange={setOfAge}
      />
      <div>
        <Button kind="main" type="submit" busy={say.busy}>
          I am {taster}: take the sheet
        </Button>
      </div>
    </Form>
  );
}
