import { commitmentWords } from "@partsproof/core/sealing";
import type { FlightRecord } from "@partsproof/house/protocol";
import { useMemo } from "react";
import { useAsk } from "../../api.ts";
import { Broken, Busy, Page, Section } from "../../parts/index.ts";
import { useFlightToken, useStored } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { checked } from "./checked.ts";
import { Outcome } from "./outcome.tsx";
import { flightPath } from "./paths.ts";
import { KeepRecord } from "./keep-record.tsx";
import { RecordFile } from "./record-file.tsx";
import { usePromise } from "./use-promise.ts";
import "./check.css";

/** Was anything changed? Reckoned on this phone, from the published record and what this phone stored before. */
export default function Check({ params }: ScreenProps) {
  const at = { household: params["household"] ?? "", flight: params["flight"] ?? "" };
  const token = useFlightToken(at.flight);
  usePromise(at, token);
  const asked = useAsk("getRecord", { at, ...(token === undefined ? {} : { token }) });
  return (
    <Page
      title="Was anything changed?"
      back={{ to: flightPath(at.household, at.flight), label: "The flight" }}
      lead="The key was promised before the first glass. This page checks the promise on this phone, not in the house."
    >
      {asked.state === "busy" && <Busy what="the record" />}
      {asked.state === "broken" && <Broken asked={asked} title="The record could not be fetched" />}
      {asked.state === "here" && <Shown answer={asked.answer} />}
    </Page>
  );
}

function Shown({ answer }: { readonly answer: FlightRecord }) {
  const stored = useStored(answer.flightId);
  const seen = useMemo(
    () => (answer.record === null ? null : checked(answer.record, stored)),
    [answer.record, stored],
  );
  const commitment = stored.commitment ?? answer.commitment;
  return (
    <>
      {answer.commitment === null && (
        <p>
          Nothing was promised for this flight: it was poured alone, or set before promises were made. There
          is nothing to check.
        </p>
      )}
      {answer.commitment !== null && answer.record === null && (
        <p>
          The key is still sealed. The promise is stored on this phone, all 256 bits of it; after the reveal
          this page compares.
        </p>
      )}
      {seen !== null && <Outcome seen={seen} />}
      {commitment !== null && (
        <Section title="Six words for the eye">
          <p className="check-words">{commitmentWords(commitment).join(" ")}</p>
          <p className="field-hint">
            Read them out: every phone at this table shows the same. They find a mix-up and are no protection
            against a cheat; the phones themselves compare all 256 bits.
          </p>
        </Section>
      )}
      <Section title="A record from a file">
        {answer.record !== null && <KeepRecord record={answer.record} />}
        <RecordFile stored={stored} />
      </Section>
      <Section title="What this cannot show">
        <ul className="needs-list">
          <li>That the pourer filled the glasses as the key says: it proves the paper, not the pour.</li>
          <li>That the house’s clock was right.</li>
          <li>That the host did not read the key where it lies on the house’s own machine.</li>
        </ul>
      </Section>
    </>
  );
}
