import type { Sheet } from "@partsproof/house/protocol";
import { printMoment } from "../../figures/index.ts";
import { GlassMat, LinkButton, Page, Section } from "../../parts/index.ts";
import { alonePath, checkPath, findingPath, flightPath, revealPath } from "../flights/paths.ts";
import { AnswersRead } from "./answers-read.tsx";
import { NotesRead } from "./notes-read.tsx";
import { placeText } from "./ranking-moves.ts";
import { allStrengthsIn, fieldsOf, guessIn, notesIn, rankingIn } from "./sheet-fields.ts";

/** A sheet that can no longer be written on, and what it waits for. */
export function ReadSheet({ sheet, household }: { readonly sheet: Sheet; readonly household: string }) {
  const fields = fieldsOf(sheet);
  const ranking = rankingIn(fields);
  const labelOf = (code: string): string | null =>
    sheet.namesOnOffer.find((name) => name.nameId === guessIn(fields, code))?.label ?? null;
  return (
    <Page
      title={`${sheet.taster}’s sheet`}
      lead={
        sheet.lockedAt === null
          ? `${sheet.flightName}. Closed without being locked: its notes are kept, its answers count for nothing.`
          : `${sheet.flightName}. Locked ${printMoment(sheet.lockedAt)}; nothing on it can change.`
      }
      back={{ to: flightPath(household, sheet.flightId), label: "The flight" }}
    >
      {sheet.typedBy !== null && <p className="soft">Typed in from paper by {sheet.typedBy}.</p>}
      <AfterLock sheet={sheet} household={household} />
      {sheet.asks.answers !== null ? (
        <Section title={sheet.asks.answers === "picked" ? sheet.task : "The orders, best first"}>
          <AnswersRead sheet={sheet} fields={fields} />
        </Section>
      ) : (
        <GlassMat
          title={`The glasses in the order they stood${sheet.asks.guesses ? ", with the guesses" : ""}`}
          glasses={sheet.glasses.map(({ code }) => ({
            code,
            ...(sheet.asks.guesses ? { label: labelOf(code) ?? "no guess" } : {}),
          }))}
        />
      )}
      {sheet.asks.ranking !== null && (
        <Section title={`Ranking, ${sheet.asks.ranking}`}>
          {ranking === null ? (
            <p className="soft">No ranking.</p>
          ) : (
            <ol className="read-rank">
              {ranking.map((tier, i) => (
                <li key={tier.join(" ")}>
                  <span className="read-place">{placeText(ranking, i)}</span>
                  <span>
                    {tier.join(", ")}
                    {tier.length > 1 && " level"}
                  </span>
                </li>
              ))}
            </ol>
          )}
        </Section>
      )}
      <Section title="Notes">
        <div className="read-notes">
          {sheet.glasses.map(({ code }) => (
            <div key={code}>
              <h3>{sheet.pouring === "alone" ? `Place ${code}` : `Glass ${code}`}</h3>
              <NotesRead notes={notesIn(fields, code)} strengths={allStrengthsIn(fields, code)} />
            </div>
          ))}
        </div>
      </Section>
    </Page>
  );
}

function AfterLock({ sheet, household }: { readonly sheet: Sheet; readonly household: string }) {
  if (sheet.flightState === "revealed") {
    return (
      <div className="form-actions">
        <LinkButton kind="main" to={revealPath(household, sheet.flightId)}>
          Open the glasses
        </LinkButton>
        <LinkButton to={findingPath(household, sheet.flightId)}>Read the finding</LinkButton>
        <LinkButton to={checkPath(household, sheet.flightId)}>Was anything changed?</LinkButton>
      </div>
    );
  }
  if (sheet.flightState === "called off") {
    return <p>This flight was called off; its key is destroyed.</p>;
  }
  if (sheet.pouring === "alone") {
    return (
      <div className="form-actions">
        <LinkButton
          kind="main"
          to={
            sheet.undersidesEntered
              ? flightPath(household, sheet.flightId)
              : alonePath(household, sheet.flightId)
          }
        >
          {sheet.undersidesEntered ? "Go to the reveal" : "Look under the glasses"}
        </LinkButton>
      </div>
    );
  }
  return (
    <p className="read-wait" role="status">
      Waiting for the reveal. This page tells when the key is open.
    </p>
  );
}
