import { type Flight, REFERENCE_LABEL } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, GlassMat, IssueSummary, Page } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { flightPath, sheetPath } from "../flights/paths.ts";
import { Stickers } from "../../print/stickers.tsx";
import { MatPhotoField } from "./mat-photo-field.tsx";
import { MixUp } from "./mix-up.tsx";
import { PaperMats } from "./paper-mats.tsx";
import { PourByLetters } from "./pour-by-letters.tsx";
import { placesOf, pouredSets, tickOfR } from "./poured-sets.ts";
import { usePaper } from "./papers.tsx";
import { useTicks } from "./use-ticks.ts";

interface MarkAndPourProps {
  readonly flight: Flight;
  readonly at: { readonly household: string; readonly flight: string };
  readonly token: string;
  readonly sheetId: string;
}

/** The four steps before the first sip: mark, pour, mix up, give places. */
export function MarkAndPour({ flight, at, token, sheetId }: MarkAndPourProps) {
  const sets = pouredSets(flight);
  const wanted = sets.flatMap(({ set, marks, reference }) => [
    ...(reference === null ? [] : [tickOfR(set)]),
    ...marks.map(({ mark }) => mark),
  ]);
  const ticks = useTicks(`poured.${flight.id}`, wanted);
  const [shuffles, setShuffles] = useState<readonly boolean[]>([false, false]);
  const { design } = flight;
  const mixed = shuffles.every(Boolean);
  const [paper, print] = usePaper<"mat" | "marks">("mat");
  const say = useSay("markPoured");
  const places = placesOf(flight);
  const labelled = sets.filter(({ reference }) => reference !== null).length;
  const ready = async (): Promise<void> => {
    const done = await say.send({ at, token });
    if (done !== null) go(sheetPath(at.household, flight.id, sheetId), { replace: true });
  };
  return (
    <>
      <div className="no-paper">
        <Page
          title="Pour alone"
          back={{ to: flightPath(at.household, flight.id), label: "The flight" }}
          lead={`${flight.name}. You pour knowing; then you lose track on purpose.`}
        >
          <ol className="alone">
            <li>
              <h2>Mark the undersides</h2>
              <p>
                Stick or write one letter under each of {flight.marks.length} like glasses, where you cannot
                see it while you drink: {flight.marks.map(({ mark }) => mark).join(", ")}.
                {labelled > 0 &&
                  ` ${labelled === 1 ? "One more glass" : `${String(labelled)} more glasses`} with R on the side, where you do see it.`}
              </p>
              <div>
                <Button onClick={() => print("marks")}>Print the marks</Button>
              </div>
            </li>
            <li>
              <h2>Pour by the letters</h2>
              <p>
                {design.setsEach === 0
                  ? "Stand them in a row, A first."
                  : design.setsEach === 1
                    ? "Stand them together on a tray or a plate."
                    : "Each set on a tray or a plate of its own."}
              </p>
              <PourByLetters flight={flight} ticks={ticks} />
              <p className="field-hint">
                To the same height in each glass: height and colour are what gives a glass away.
              </p>
            </li>
            <li>
              <h2>Mix them up</h2>
              <MixUp sets={design.setsEach} shuffles={shuffles} onChange={setShuffles} />
            </li>
            <li>
              <h2>Give them places</h2>
              <p>
                Without lifting them to look: the first that comes to hand at place 1, and so on
                {design.setsEach > 1 && ", tray by tray; the tray that comes first is set 1"}. From here the
                place is the glass’s name. Do not move them again.
                {labelled > 0 && design.setsEach > 0 && " R stands before the places of its set."}
                {labelled > 0 && design.setsEach === 0 && " R stands before place 1."}
              </p>
              <GlassMat
                title="Places on the table"
                glasses={places.flatMap(({ set, codes }) =>
                  codes.map((code) => ({ code, ...(set === null ? {} : { state: `set ${String(set)}` }) })),
                )}
              />
              <div>
                <Button onClick={() => print("mat")}>Print the mat</Button>
              </div>
              <MatPhotoField flight={flight.id} />
            </li>
          </ol>
          <div className="ready-do">
            <IssueSummary say={say} />
            {(!mixed || ticks.count < wanted.length) && (
              <p className="soft" id="alone-why">
                First {ticks.count < wanted.length ? "tick what is poured" : ""}
                {ticks.count < wanted.length && !mixed ? " and " : ""}
                {mixed ? "" : "say that they are mixed up"}.
              </p>
            )}
            <Button
              kind="main"
              busy={say.busy}
              disabled={!mixed || ticks.count < wanted.length}
              aria-describedby="alone-why"
              onClick={() => void ready()}
            >
              They stand at their places
            </Button>
          </div>
        </Page>
      </div>
      <div className="only-paper">
        {paper === "mat" ? (
          <PaperMats
            flight={flight}
            tasters={[
              {
                taster: flight.sheets[0]?.taster ?? "",
                glasses: places.flatMap(({ set, codes, reference }) =>
                  [...(reference ? [REFERENCE_LABEL] : []), ...codes].map((code) => ({ code, set })),
                ),
              },
            ]}
          />
        ) : (
          <Stickers
            title={`${flight.name}: marks for the undersides`}
            stickers={flight.marks.map(({ mark }) => ({ key: mark, mark }))}
          />
        )}
      </div>
    </>
  );
}
