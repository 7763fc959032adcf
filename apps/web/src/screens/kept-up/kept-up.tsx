import type { KeptUp } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { mlDigits, printAbv, printAge, printDay, printMl, printShare } from "../../figures/index.ts";
import { Broken, Busy, Empty, LinkButton, NumberHero, Page, Section } from "../../parts/index.ts";
import { StreamKey, StreamPlot, useFigureWidth } from "../../plots/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { NextAddition } from "./next-addition.tsx";
import { headlineOf, layersOf, printHalfLife, ticksOf } from "./story.ts";
import "./kept-up.css";

/** A bottle that is poured from and topped up: what it was over time, what is left of each addition, what to add next. */
export default function KeptUpPage({ params }: ScreenProps) {
  const household = useHousehold().id;
  const vessel = params["vessel"] ?? "";
  const asked = useAsk("getKeptUp", { at: { household, vessel } });
  const to = `/h/${household}/shelf/vessels/${vessel}`;
  return (
    <Page
      title={asked.answer === undefined ? "Kept up" : `${asked.answer.label}, kept up`}
      wide
      back={{ to, label: "The vessel" }}
      lead="Poured from and topped up: every addition thins out with every pour after it."
    >
      {asked.state === "busy" && <Busy what="its story" />}
      {asked.state === "broken" && <Broken asked={asked} title="Its story could not be fetched" />}
      {asked.state === "here" &&
        (asked.answer.additions.length === 0 ? (
          <Empty
            title="Nothing was ever in it"
            action={
              <LinkButton kind="main" to={to}>
                Pour something in
              </LinkButton>
            }
          />
        ) : (
          <Story told={asked.answer} household={household} />
        ))}
    </Page>
  );
}

/** As many as there are tones. */
const MOST_LAYERS = 6;

function Story({ told, household }: { readonly told: KeptUp; readonly household: string }) {
  const width = useFigureWidth();
  const now = useNow();
  const { layers, points } = layersOf(told, MOST_LAYERS);
  const until = Math.max(now, (points.at(-1)?.at ?? now) + 1);
  const last = points.at(-1);
  return (
    <div className="kept">
      <div className="form">
        <StreamPlot
          title={headlineOf(told)}
          layers={layers}
          points={points}
          capacityMl={told.capacityMl}
          until={until}
          ticks={ticksOf(points[0]?.at ?? until, until)}
          width={width}
        />
        <ul className="kept-legend" aria-label="What is in it now">
          {layers.map(({ key, label, water }, i) => (
            <li key={key}>
              <StreamKey place={i} water={water} />
              <b>{printShare(last?.parts[i] ?? 0)}</b> <span>{label}</span>
            </li>
          ))}
        </ul>
        <Section title="What went in, and what is left of it">
          <ol className="kept-additions" reversed>
            {told.additions.toReversed().map(({ transferId, at, from, ml, left, leftMl, halfLifeDays }) => (
              <li key={transferId}>
                <p>
                  <b>{printShare(left)}</b> left of {printMl(ml)} from {from}
                </p>
                <p className="soft small">
                  {printDay(at)}, {printMl(leftMl)} of it still there; {printHalfLife(halfLifeDays)}
                </p>
              </li>
            ))}
          </ol>
          <p className="soft small">
            {told.pours} pours took {printMl(told.pouredMl)} in all. Taken to be mixed whenever it is poured.
          </p>
        </Section>
      </div>
      <div className="form">
        <NumberHero
          size="hero"
          label="In it now"
          value={mlDigits(told.now.volumeMl)}
          unit="mL"
          {...(told.now.abv20 === null ? {} : { note: `at ${printAbv(told.now.abv20)}` })}
        />
        <NumberHero
          label="Youngest in it"
          value={printAge(told.now.youngestAge.years)}
          unit=""
          note={told.now.youngestAge.why}
        />
        <NextAddition told={told} household={household} />
      </div>
    </div>
  );
}
