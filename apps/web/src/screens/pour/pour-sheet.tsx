import type { Flight, PourList } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { Broken, Busy, Button, Dialog, IssueSummary, Page, SafetyNote, Section } from "../../parts/index.ts";
import { keepToken, tokenOf } from "../../session/index.ts";
import { ByBottle } from "./by-bottle.tsx";
import { ByTaster } from "./by-taster.tsx";
import { tickOf } from "./listed-glass.ts";
import { type Paper, Papers, usePaper } from "./papers.tsx";
import { useTicks } from "./use-ticks.ts";

export interface PourSheetProps {
  readonly flight: Flight;
  readonly at: { readonly household: string; readonly flight: string };
  readonly token: string;
}

/** The list itself: bottles first, then each taster's glasses in serving order. */
export function PourSheet({ flight, at, token }: PourSheetProps) {
  const asked = useAsk("getPourList", { at, token });
  if (asked.state !== "here") {
    return (
      <Page title="The pourer’s page">
        {asked.state === "busy" ? (
          <Busy what="the list" />
        ) : (
          <Broken asked={asked} title="The list stays shut" />
        )}
      </Page>
    );
  }
  return <Shown flight={flight} at={at} token={token} list={asked.answer} />;
}

function Shown({ flight, at, token, list }: PourSheetProps & { readonly list: PourList }) {
  const codes = list.tasters.flatMap(({ taster, glasses }) => glasses.map((glass) => tickOf(taster, glass)));
  const ticks = useTicks(`poured.${flight.id}`, codes);
  const [paper, print] = usePaper<Paper>("list");
  const papers: readonly { readonly paper: Paper; readonly label: string }[] = [
    { paper: "list", label: "Print this list" },
    { paper: "stickers", label: "Print stickers for the glasses" },
    { paper: "mats", label: "Print mats for the tasters" },
    { paper: "sheets", label: "Print paper sheets" },
  ];
  return (
    <>
      <div className={paper === "list" ? "" : "no-paper"}>
        <Page
          title="The pourer’s page"
          heading={`${flight.pourer ?? "You"} ${flight.pourer === null ? "pour" : "pours"}`}
          lead={`${flight.name}: ${list.pourMl} mL into each of ${codes.length} glasses. Whoever sees this page knows the key, so keep it from everybody who tastes, and taste nothing of this flight yourself.`}
        >
          <Section title="What each bottle gives">
            <ByBottle list={list} ticks={ticks} />
          </Section>
          <Section title="Glass by glass">
            <p className="no-paper soft">
              Write the number on each glass or stand it on a printed mat. Tick what is poured; {ticks.count}{" "}
              of {codes.length} are.
            </p>
            <ByTaster list={list} ticks={ticks} />
          </Section>
          <section className="no-paper section">
            <h2>Print</h2>
            <div className="form-actions">
              {papers.map((one) => (
                <Button key={one.paper} onClick={() => print(one.paper)}>
                  {one.label}
                </Button>
              ))}
            </div>
            <p className="field-hint">
              Stickers, mats and paper sheets carry numbers only: a taster may see them.
            </p>
          </section>
          <SafetyNote title="Strong spirit on the table">
            Its vapour burns: no candles or cigarettes while you pour. Stand water and something to spit into
            beside the glasses.
          </SafetyNote>
          <Ready flight={flight} at={at} token={token} unpoured={codes.length - ticks.count} />
        </Page>
      </div>
      <Papers paper={paper} list={list} flight={flight} />
    </>
  );
}

interface ReadyProps extends PourSheetProps {
  readonly unpoured: number;
}

function Ready({ flight, at, token, unpoured }: ReadyProps) {
  const [asking, setAsking] = useState(false);
  const say = useSay("markPoured");
  if (flight.state !== "pouring") {
    return (
      <p className="ready" role="status">
        The glasses stand ready, and the tasters can write. Put the bottles out of sight and keep a straight
        face until the reveal.
      </p>
    );
  }
  const poured = async (): Promise<void> => {
    const done = await say.send({ at, token });
    setAsking(false);
    // Where tasters use this device too, the key must not stay within their reach.
    const shared =
      tokenOf("host", flight.id) !== undefined ||
      flight.sheets.some((sheet) => tokenOf("sheet", sheet.sheetId) !== undefined);
    if (done !== null && shared) keepToken("pourer", flight.id, null);
  };
  return (
    <div className="no-paper ready-do">
      <IssueSummary say={say} />
      <Button kind="main" onClick={() => setAsking(true)}>
        The glasses stand ready
      </Button>
      <Dialog title="Everything poured?" open={asking} onClose={() => setAsking(false)} alert>
        {unpoured > 0 && (
          <p>
            <strong>
              {unpoured} {unpoured === 1 ? "glass is" : "glasses are"} not ticked as poured.
            </strong>
          </p>
        )}
        <p>The tasters can write from now on, and the flight can no longer be called off.</p>
        <div className="form-actions">
          <Button kind="main" busy={say.busy} onClick={() => void poured()}>
            They stand ready
          </Button>
          <Button onClick={() => setAsking(false)}>Not yet</Button>
        </div>
      </Dialog>
    </div>
  );
}
