import type { Rest, RestAdvice } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { fromNow, printDay } from "../../figures/index.ts";
import { Broken, Busy, NumberHero, Section, Tag } from "../../parts/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import { CourseFigure } from "./course-figure.tsx";

/** What to believe of the rest now: taste when, ready when, when the oak leads; and what that rests on. */
export function Advice({ rest }: { readonly rest: Rest }) {
  const household = useHousehold();
  const asked = useAsk("adviseRest", { at: { household: household.id, rest: rest.id } });
  if (asked.state === "busy")
    return (
      <Section title="When">
        <Busy what="what is to be believed" />
      </Section>
    );
  if (asked.state === "broken") return <Broken asked={asked} title="What to believe could not be told" />;
  return <Told rest={rest} advice={asked.answer} />;
}

function Told({ rest, advice }: { readonly rest: Rest; readonly advice: RestAdvice }) {
  const now = useNow();
  const { answer } = advice;
  if (answer === null)
    return (
      <Section title={rest.kind === "glass" ? "On glass" : "When"}>
        {rest.minimumEndsAt !== null && (rest.minimumDays ?? 0) > 0 && (
          <p>
            Its shortest rest, {rest.minimumDays} days, is over {fromNow(rest.minimumEndsAt, now)},{" "}
            {printDay(rest.minimumEndsAt)}.
          </p>
        )}
        <p>{advice.why}</p>
        {advice.remarks.map((remark) => (
          <p key={remark}>{remark}</p>
        ))}
      </Section>
    );
  const [next, ...later] = advice.nextTastings;
  const { ready, pull, today, leadsFrom } = answer;
  const window = windowOf(answer);
  const [first, ...sentences] = answer.sentences;
  return (
    <Section
      title={first ?? "When"}
      action={advice.tasteNow ? <Tag kind="strong">taste now</Tag> : undefined}
    >
      <div className="numbers">
        {next !== undefined && (
          <NumberHero
            label="Taste next"
            value={`day ${next.day}`}
            unit=""
            note={`${printDay(next.at)}, ${fromNow(next.at, now)}`}
          />
        )}
        <NumberHero
          label={ready.high === null ? "If it gets there, ready" : "Likely ready"}
          value={
            window === null ? "hardly ever" : `day ${Math.round(window.from)} to ${Math.round(window.to)}`
          }
          unit=""
          note={
            advice.readyFrom === null || advice.readyTo === null
              ? "with this wood"
              : `80 %: ${printDay(advice.readyFrom)} to ${printDay(advice.readyTo)}`
          }
        />
        {leadsFrom !== null && advice.leadsFrom !== null && (
          <NumberHero
            label="Past this the oak leads"
            value={`day ${Math.round(leadsFrom)}`}
            unit=""
            note={`as likely as not; ${printDay(advice.leadsFrom)}`}
          />
        )}
      </div>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {later.length > 0 && (
        <p className="soft small">
          After that, days that tell most:{" "}
          {later.map(({ day, at }) => `day ${day} (${printDay(at)})`).join(", ")}.
        </p>
      )}
      {answer.attributes.slice(0, 1).map((one) => (
        <CourseFigure
          key={one.attribute}
          of={one}
          tasted={tastedOf(rest, advice.attributeIds[0])}
          pullAt={pull.level}
          window={window}
          today={today}
          name={`rest-${advice.attributeIds[0] ?? ""}`}
        />
      ))}
      {answer.attributes.length > 1 && (
        <details className="rest-others">
          <summary>What else was tasted</summary>
          {answer.attributes.slice(1).map((one, i) => (
            <CourseFigure
              key={one.attribute}
              of={one}
              tasted={tastedOf(rest, advice.attributeIds[i + 1])}
              pullAt={null}
              window={null}
              today={today}
              name={`rest-${advice.attributeIds[i + 1] ?? ""}`}
            />
          ))}
        </details>
      )}
      <p className="rest-honest">
        <strong>No published constants.</strong> {answer.notKnown}
      </p>
      {advice.remarks.map((remark) => (
        <p key={remark} className="soft small">
          {remark}
        </p>
      ))}
      <p className="soft small">{answer.method}</p>
    </Section>
  );
}

/** The window, or the one of those courses that get there. */
function windowOf({ ready }: NonNullable<RestAdvice["answer"]>): { from: number; to: number } | null {
  if (ready.low !== null && ready.high !== null) return { from: ready.low, to: ready.high };
  return ready.ifEver === null ? null : { from: ready.ifEver.low, to: ready.ifEver.high };
}

function tastedOf({ checks }: Rest, id: string | undefined): { day: number; level: number }[] {
  return checks.flatMap(({ day, levels }) => {
    const level = id === undefined ? undefined : levels[id];
    return level === undefined ? [] : [{ day, level }];
  });
}
