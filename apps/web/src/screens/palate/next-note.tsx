import type { PalateBoard } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { Broken, Busy, Empty, LinkButton, NumberHero, Page, SafetyNote, Section } from "../../parts/index.ts";
import { Scrolled } from "../../plots/index.ts";
import { useHousehold } from "../../session/index.ts";
import "./next-note.css";

/** So many glasses are told with their reason; the others on asking. */
const TOLD = 5;

/** What to taste next, so that most is learned of what the shelf tastes of. */
export default function NextNote() {
  const { id: household } = useHousehold();
  const asked = useAsk("getPalate", { at: { household } });
  return (
    <Page
      title="What to taste next"
      lead="Whose note would teach most of what the whiskeys on your shelf taste of, to you."
      back={{ to: `/h/${household}/shelf`, label: "Shelf" }}
    >
      {asked.state === "busy" && <Busy what="what was learned" />}
      {asked.state === "broken" && <Broken asked={asked} title="What was learned could not be fetched" />}
      {asked.state === "here" && <Board board={asked.answer} household={household} />}
    </Page>
  );
}

function Board({ board, household }: { readonly board: PalateBoard; readonly household: string }) {
  const { headline, next, doubt, counted, silent, method } = board;
  if (next.length === 0)
    return (
      <Empty
        title={headline}
        action={
          <LinkButton kind="main" to={`/h/${household}/flights/new`}>
            Set up a flight
          </LinkButton>
        }
      >
        <p>Notes of revealed flights, and what is written on the shelf, teach what whiskeys taste of.</p>
      </Empty>
    );
  const poured = next.slice(0, TOLD);
  return (
    <>
      <Section title={headline}>
        <ol className="next-notes">
          {poured.map((one) => (
            <li key={one.key}>
              <h3>{one.label}</h3>
              <NumberHero
                label="Off by now, and after a note"
                value={`${one.off.before.toFixed(1)} → ${one.off.after.toFixed(1)}`}
                unit="of 10"
                size="plain"
              />
              <p>{one.why}</p>
            </li>
          ))}
        </ol>
        <div className="form-actions">
          <LinkButton
            kind="main"
            to={`/h/${household}/flights/new?pour=${poured.map(({ vesselId }) => vesselId).join(",")}`}
          >
            Set up a flight of {poured.length === 1 ? "it" : `these ${poured.length}`}
          </LinkButton>
        </div>
        <SafetyNote title="A flight is alcohol">
          Small pours, water, spit. Never before driving, not in pregnancy, of legal age.
        </SafetyNote>
        {next.length > TOLD && (
          <details>
            <summary>{next.length - TOLD} more, by how much they teach</summary>
            <ol start={TOLD + 1}>
              {next.slice(TOLD).map(({ key, label, off }) => (
                <li key={key}>
                  {label}: off by {off.before.toFixed(1)} now, by {off.after.toFixed(1)} after a note
                </li>
              ))}
            </ol>
          </details>
        )}
      </Section>
      <Section title="How you use the scale">
        <Tasters board={board} />
      </Section>
      <p className="soft small">
        Levels of {doubt.whiskeys} {doubt.whiskeys === 1 ? "whiskey" : "whiskeys"} in {doubt.attributes}{" "}
        {doubt.attributes === 1 ? "attribute" : "attributes"} are off by {doubt.sd.toFixed(1)} (root mean
        square). Learned from {counted.notes} {counted.notes === 1 ? "note" : "notes"} in {counted.flights}{" "}
        revealed {counted.flights === 1 ? "flight" : "flights"} and what the shelf says of {counted.shelf}.{" "}
        {silent.length > 0 &&
          `Not looked at: ${silent.map(({ label, why }) => `${label} (${why})`).join("; ")}. `}
        How: {method}.
      </p>
    </>
  );
}

function Tasters({ board: { tasters, mixing } }: { readonly board: PalateBoard }) {
  const higher = (offset: number): string =>
    Math.abs(offset) < 0.05
      ? "as the table"
      : `${Math.abs(offset).toFixed(1)} ${offset < 0 ? "lower" : "higher"}`;
  return (
    <>
      <Scrolled>
        <table className="next-note-scales">
          <thead>
            <tr>
              <th scope="col">Who</th>
              <th scope="col">Says everything</th>
              <th scope="col">Spread ×</th>
              <th scope="col">A note is off by</th>
            </tr>
          </thead>
          <tbody>
            {tasters.map(({ tasterId, taster, offset, stretch, noise }) => (
              <tr key={tasterId ?? "shelf"}>
                <th scope="row">{taster}</th>
                <td>{higher(offset)}</td>
                <td>{stretch.toFixed(2)}</td>
                <td>{noise.toFixed(1)} besides its words</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolled>
      <p className="soft small">
        On the scale that the table has in common; taken out of what was learned. A mix of half and half is
        off the mean of its parts by about {mixing.toFixed(1)}.
      </p>
    </>
  );
}
