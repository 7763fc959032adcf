import { useAsk } from "../../api.ts";
import { Broken, Busy, Page } from "../../parts/index.ts";
import { flightPath } from "../flights/paths.ts";
import type { PaperAt } from "./paper-at.ts";
import { TypedSheet } from "./typed-sheet.tsx";

/** A paper sheet that was taken on this device, while it can be written on. */
export function OpenPaper({ at, token }: { readonly at: PaperAt; readonly token: string }) {
  const asked = useAsk("getSheet", { at, token });
  if (asked.state === "here" && asked.answer.state === "open") {
    return <TypedSheet sheet={asked.answer} at={at} token={token} />;
  }
  return (
    <Page title="A paper sheet" back={{ to: flightPath(at.household, at.flight), label: "The flight" }}>
      {asked.state === "busy" && <Busy what="the sheet" />}
      {asked.state === "broken" && <Broken asked={asked} title="The sheet could not be fetched" />}
      {asked.state === "here" && <p>{asked.answer.taster}’s sheet is locked.</p>}
    </Page>
  );
}
