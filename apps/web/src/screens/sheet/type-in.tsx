import { useAsk } from "../../api.ts";
import { Broken, Busy, Page } from "../../parts/index.ts";
import { useToken } from "../../session/index.ts";
import { flightPath } from "../flights/paths.ts";
import type { ScreenProps } from "../screen.ts";
import { OpenPaper } from "./open-paper.tsx";
import type { PaperAt } from "./paper-at.ts";
import { TakePaper } from "./take-paper.tsx";

/** A paper sheet typed in by the host: one screen, in the order of the paper. */
export default function TypeIn({ params }: ScreenProps) {
  const household = params["household"] ?? "";
  const at: PaperAt = { household, flight: params["flight"] ?? "", sheet: params["sheet"] ?? "" };
  const token = useToken("sheet", at.sheet);
  const asked = useAsk("getFlight", { at: { household, flight: at.flight } });
  const back = { to: flightPath(household, at.flight), label: "The flight" };
  const line =
    asked.state === "here" ? asked.answer.sheets.find(({ sheetId }) => sheetId === at.sheet) : undefined;
  if (asked.state !== "here" || line === undefined) {
    return (
      <Page title="A paper sheet" back={back}>
        {asked.state === "busy" ? (
          <Busy what="the flight" />
        ) : asked.state === "broken" ? (
          <Broken asked={asked} title="The flight could not be fetched" />
        ) : (
          <p>There is no such sheet in this flight.</p>
        )}
      </Page>
    );
  }
  if (asked.answer.state !== "tasting" || (token === undefined && line.state !== "free")) {
    return (
      <Page title={`${line.taster}’s paper sheet`} back={back}>
        <p>
          {asked.answer.state !== "tasting"
            ? "A paper sheet is typed in once the glasses are poured and before the reveal."
            : "This sheet is on another phone. Free it first, from the flight’s page."}
        </p>
      </Page>
    );
  }
  return token === undefined ? (
    <TakePaper flight={asked.answer} taster={line.taster} at={at} />
  ) : (
    <OpenPaper at={at} token={token} />
  );
}
