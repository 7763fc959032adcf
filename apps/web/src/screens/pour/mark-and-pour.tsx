import type { Flight } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, GlassMat, IssueSummary, Page } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { flightPath, sheetPath } from "../flights/paths.ts";
import { Stickers } from "../../print/stickers.tsx";
import { MatPhotoField } from "./mat-photo-field.tsx";
import { PaperMats } from "./paper-mats.tsx";
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
  const ticks = useTicks(
    `poured.${flight.id}`,
    flight.marks.map(({ mark }) => mark),
  );
  const [shuffles, setShuffles] = useState<readonly boolean[]>([false, false]);
  const mixed = shuffles.every(Boolean);
  const [paper, print] = usePaper<"mat" | "marks">("mat");
  const say = useSay("markPoured");
  const places = flight.marks.map((_, i) => String(i + 1));
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
                Stick or write one letter under each of {flight.glassCount} like glasses, where you cannot see
                it while you drink: {flight.marks.map(({ mark }) => mark).join(", ")}.
              </p>
              <div>
                <Button onClick={() => print("marks")}>Print the marks</Button>
              </div>
            </li>
            <li>
              <h2>Pour by the letters</h2>
              <p>Stand them in a row, A first.</p>
              <ul className="alone-marks">
                {flight.marks.map(({ mark, label }) => (
                  <li key={mark}>
                    <label className="pourline">
                      <input
                        type="checkbox"
                        checked={ticks.has(mark)}
                        onChange={(event) => ticks.set(mark, event.target.checked)}
                      />
                      <span className="pourline-code">{mark}</span>
                      <span className="pourline-what">
                        {label}
                        <span className="pourline-ml"> {flight.pourMl} mL</span>
                      </span>
                    </label>
                  </li>
                ))}
              </ul>
              <p className="field-hint">
                To the same height in each glass: height and colour are what gives a glass away.
              </p>
            </li>
            <li>
              <h2>Mix them up</h2>
              <p>
                At least two shuffles. Slide the glasses about with your eyes off them, turn round, and slide
                them again. If anybody is in the house, let them do it while you are out of the room.
              </p>
              <div className="alone-shuffles">
                {shuffles.map((done, i) => (
                  // oxlint-disable-next-line react/no-array-index-key -- the first, the second, …
                  <label className="tick" key={i}>
                    <input
                      type="checkbox"
                      checked={done}
                      onChange={(event) =>
                        setShuffles(shuffles.map((was, at) => (at === i ? event.target.checked : was)))
                      }
                    />
                    <span>
                      {["First", "Second", "Third", "Fourth"][i]} shuffle done
                      {i === shuffles.length - 1 && ", and I have lost track"}
                    </span>
                  </label>
                ))}
              </div>
              {shuffles.length < 4 && (
                <div>
                  <Button kind="quiet" onClick={() => setShuffles([...shuffles, false])}>
                    One more shuffle
                  </Button>
                </div>
              )}
            </li>
            <li>
              <h2>Give them places</h2>
              <p>
                Without lifting them to look: the first that comes to hand at place 1, and so on. From here
                the place is the glass’s name. Do not move them again.
              </p>
              <GlassMat title="Places on the table" glasses={places.map((code) => ({ code }))} />
              <div>
                <Button onClick={() => print("mat")}>Print the mat</Button>
              </div>
              <MatPhotoField flight={flight.id} />
            </li>
          </ol>
          <div className="ready-do">
            <IssueSummary say={say} />
            {(!mixed || ticks.count < flight.marks.length) && (
              <p className="soft" id="alone-why">
                First {ticks.count < flight.marks.length ? "tick what is poured" : ""}
                {ticks.count < flight.marks.length && !mixed ? " and " : ""}
                {mixed ? "" : "say that they are mixed up"}.
              </p>
            )}
            <Button
              kind="main"
              busy={say.busy}
              disabled={!mixed || ticks.count < flight.marks.length}
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
                glasses: places.map((code) => ({ code, set: null })),
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
