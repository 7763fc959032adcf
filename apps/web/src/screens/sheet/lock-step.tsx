import { AboutPhone } from "../join/about-phone.tsx";
import { AnswersRead } from "./answers-read.tsx";
import { useRef, useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Dialog, IssueSummary } from "../../parts/index.ts";
import { drawKey } from "../../session/index.ts";
import { blanksOf, noted } from "./blanks.ts";
import type { Keeper } from "./keeper.ts";
import { placeText } from "./ranking-moves.ts";
import { guessIn, notesIn, rankingIn, sureIn } from "./sheet-fields.ts";
import type { SheetStepProps } from "./sheet-step.ts";

export interface LockStepProps extends SheetStepProps {
  readonly keeper: Keeper;
  readonly household: string;
  readonly token: string;
  readonly onLocked: () => void;
}

/** What the sheet says in all, what is left blank, and the lock. */
export function LockStep({ sheet, fields, heading, keeper, household, token, onLocked }: LockStepProps) {
  const [asking, setAsking] = useState(false);
  const [unsaved, setUnsaved] = useState(false);
  const say = useSay("lockSheet");
  // One lock, however often it has to be sent.
  const key = useRef(drawKey());
  const blanks = blanksOf(fields, sheet);
  const ranking = rankingIn(fields);
  const alone = sheet.pouring === "alone";
  // In sets a list of glasses without notes tells nothing.
  const noting =
    sheet.asks.answers === null ||
    sheet.glasses.some(({ code }) => noted(fields, code, "first") || notesIn(fields, code).score !== null);
  const lock = async (): Promise<void> => {
    const kept = await keeper.flush();
    setUnsaved(!kept);
    if (!kept) {
      setAsking(false);
      return;
    }
    const at = { household, flight: sheet.flightId, sheet: sheet.id };
    const locked = await say.send({
      at,
      token,
      body: { after: keeper.see().sheet.entries, key: key.current },
    });
    setAsking(false);
    if (locked !== null) onLocked();
  };
  return (
    <section className="lock">
      <IssueSummary say={say} />
      {unsaved && (
        <p className="field-issue" role="alert">
          The sheet is not locked: not all of it could be saved. The reason stands at the top.
        </p>
      )}
      <h2 ref={heading} tabIndex={-1}>
        Before you lock
      </h2>
      {sheet.asks.answers !== null && <AnswersRead sheet={sheet} fields={fields} />}
      {noting && (
        <div className="lock-table">
          <table>
            <thead>
              <tr>
                <th scope="col">{alone ? "Place" : "Glass"}</th>
                <th scope="col">Notes</th>
                {sheet.asks.guesses && <th scope="col">Guess</th>}
                {sheet.asks.ranking !== null && <th scope="col">Rank</th>}
                <th scope="col">Score</th>
              </tr>
            </thead>
            <tbody>
              {sheet.glasses.map(({ code }) => {
                const guess = sheet.namesOnOffer.find((name) => name.nameId === guessIn(fields, code));
                const sure = sureIn(fields, code);
                const place = ranking?.findIndex((tier) => tier.includes(code)) ?? -1;
                const passes = (["first", "second"] as const).filter((pass) => noted(fields, code, pass));
                return (
                  <tr key={code}>
                    <th scope="row">{code}</th>
                    <td>{passes.length === 2 ? "twice" : passes.length === 1 ? "once" : <Blank />}</td>
                    {sheet.asks.guesses && (
                      <td>
                        {guess?.label ?? <Blank />}
                        {sure !== null && `, ${sure} % sure`}
                      </td>
                    )}
                    {sheet.asks.ranking !== null && (
                      <td>{place === -1 || ranking === null ? <Blank /> : placeText(ranking, place)}</td>
                    )}
                    <td>{notesIn(fields, code).score ?? <Blank />}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </div>
      )}
      {blanks.length > 0 ? (
        <div className="lock-blanks">
          <p>
            <strong>Left blank</strong>, which is allowed and will be said in the finding:
          </p>
          <ul>
            {blanks.map((blank) => (
              <li key={blank}>{blank}</li>
            ))}
          </ul>
        </div>
      ) : (
        <p>
          {sheet.asks.guesses ? "Notes, guesses and ranking are all there." : "All that is asked is there."}
        </p>
      )}
      <div className="form-actions">
        <Button kind="main" onClick={() => setAsking(true)}>
          Lock the sheet
        </Button>
      </div>
      <AboutPhone />
      <Dialog title="Lock the sheet?" open={asking} onClose={() => setAsking(false)} alert>
        <p>
          Nothing on it can change any more, by anybody.{" "}
          {alone ? "Only then look under the glasses." : "The key opens when every sheet is locked."}
        </p>
        {blanks.length > 0 && (
          <ul className="lock-list">
            {blanks.map((blank) => (
              <li key={blank}>{blank}</li>
            ))}
          </ul>
        )}
        <div className="form-actions">
          <Button kind="main" busy={say.busy} onClick={() => void lock()}>
            Lock it
          </Button>
          <Button onClick={() => setAsking(false)}>Not yet</Button>
        </div>
      </Dialog>
    </section>
  );
}

const Blank = () => (
  <span className="lock-blank">
    <span aria-hidden="true">–</span>
    <span className="unseen">blank</span>
  </span>
);
