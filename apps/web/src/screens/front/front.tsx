import type { NextThing } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { fromNow, printDay } from "../../figures/index.ts";
import { Broken, Busy, Empty, LinkButton, Page, SafetyNote, Section } from "../../parts/index.ts";
import { BatchesGlyph, FlightsGlyph, RecipesGlyph, ShelfGlyph } from "../../parts/glyphs.tsx";
import { Link } from "../../router/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import { nextLink } from "./next-link.ts";
import { Remind } from "./remind.tsx";
import "./front.css";

const GLYPHS = {
  shelf: ShelfGlyph,
  vessel: ShelfGlyph,
  recipe: RecipesGlyph,
  batch: BatchesGlyph,
  flight: FlightsGlyph,
} as const;

/** What is next in this household. */
export default function Front() {
  const household = useHousehold();
  const at = { household: household.id };
  const next = useAsk("next", { at });
  const findings = useAsk("listFindings", { at, query: { limit: 1 } });
  const finding = findings.answer?.items[0];
  return (
    <Page
      title="What is next"
      lead={
        household.demo ? (
          <>
            {household.name}. Everything in it is invented.{" "}
            <Link to={`/h/${household.id}/household`}>Remove it</Link>
          </>
        ) : (
          household.name
        )
      }
    >
      {next.state === "busy" && <Busy what="what is next" />}
      {next.state === "broken" && <Broken asked={next} title="What is next could not be told" />}
      {next.state === "here" && next.answer.items.length === 0 && (
        <Empty
          title="Nothing waits"
          action={
            <LinkButton kind="main" to={`/h/${household.id}/flights/new`}>
              Set a flight
            </LinkButton>
          }
        >
          <p>No batch is resting, no sheet is open. A good evening to taste.</p>
        </Empty>
      )}
      {next.state === "here" && next.answer.items.length > 0 && (
        <ol className="next">
          {next.answer.items.map((thing, i) => (
            <Next
              key={`${thing.kind} ${thing.subject.id ?? i}`}
              thing={thing}
              household={household.id}
              first={i === 0}
            />
          ))}
        </ol>
      )}
      {next.state === "here" && <Remind things={next.answer.items} />}
      {finding !== undefined && (
        <Section title="Last finding">
          <Link className="front-finding" to={`/h/${household.id}/findings/${finding.flightId}`}>
            <span className="name">{finding.headline}</span>
            <span className="soft small">
              {finding.name}, {printDay(finding.revealedAt)}
            </span>
          </Link>
        </Section>
      )}
      <SafetyNote title="Spit, drink water, never drive after tasting">
        <p>
          For people of legal drinking age, not in pregnancy. <Link to="/about">How to stay well</Link>
        </p>
      </SafetyNote>
    </Page>
  );
}

function Next({
  thing,
  household,
  first,
}: {
  readonly thing: NextThing;
  readonly household: string;
  readonly first: boolean;
}) {
  const now = useNow();
  const Glyph = GLYPHS[thing.subject.kind];
  const { to, label } = nextLink(household, thing);
  return (
    <li>
      <Link to={to} className={`next-row ${first ? "next-first" : ""}`}>
        <span className="next-glyph">
          <Glyph />
        </span>
        <span className="next-words">
          <span className={first ? "name" : ""}>{thing.text}</span>
          {thing.at !== null && <span className="soft small">{whenWords(thing.at, now)}</span>}
        </span>
        <span className="next-to">
          {label} <span aria-hidden="true">→</span>
        </span>
      </Link>
    </li>
  );
}

/** The day, and how far off it is by this device's calendar. */
function whenWords(at: string, now: number): string {
  return `${printDay(at)}, ${fromNow(at, now)}`;
}
