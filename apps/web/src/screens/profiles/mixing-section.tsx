import { attributeName } from "@partsproof/core/sensory";
import type { LearnedMixing } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { Broken, Busy, Section } from "../../parts/index.ts";
import { drawForetold, Figure } from "../../plots/index.ts";

/** So many attributes that mix by the mean are told at once; the others on asking. */
const TOLD = 4;

/** How the household's own blends came of their parts: which law each attribute follows, and how sure that is. */
export function MixingSection({ household }: { readonly household: string }) {
  const asked = useAsk("getMixing", { at: { household } });
  return (
    <Section title="What mixing does">
      {asked.state === "busy" && <Busy what="what blends have shown" />}
      {asked.state === "broken" && <Broken asked={asked} title="This could not be fetched" />}
      {asked.state === "here" && (
        <>
          {asked.answer.attributes.every(({ law }) => law === "mean") && <p>{asked.answer.headline}</p>}
          {asked.answer.attributes.map((one, i) =>
            one.law === "mean" ? null : (
              <LawFigure key={one.attribute} learned={one} law={one.law} name={`mixing-${i + 1}`} />
            ),
          )}
          <Kept some={asked.answer.attributes.filter(({ law }) => law === "mean")} />
          <p className="soft small">
            From blends that were noted in revealed flights and whose whiskeys are all known. The mean of the
            parts is held {asked.answer.needed.meanBeforehand} times likelier beforehand; a search goes by
            another law only where it is {asked.answer.needed.odds} times likelier than the mean after that.
            {asked.answer.silent.length > 0 &&
              ` Not looked at: ${asked.answer.silent.map(({ label, why }) => `${label} (${why})`).join("; ")}.`}
          </p>
        </>
      )}
    </Section>
  );
}

function Kept({ some }: { readonly some: readonly LearnedMixing[] }) {
  if (some.length === 0) return null;
  const lines = (few: readonly LearnedMixing[]) => (
    <ul className="small">
      {few.map(({ attribute, sentence }) => (
        <li key={attribute}>{sentence}</li>
      ))}
    </ul>
  );
  return (
    <>
      {lines(some.slice(0, TOLD))}
      {some.length > TOLD && (
        <details>
          <summary>{some.length - TOLD} more by the mean</summary>
          {lines(some.slice(TOLD))}
        </details>
      )}
    </>
  );
}

const LAWS = { power: "The power law", strongest: "The strongest part" } as const;

/** The blends that speak against the mean. */
function LawFigure({
  learned,
  law,
  name,
}: {
  readonly learned: LearnedMixing;
  readonly law: "power" | "strongest";
  readonly name: string;
}) {
  const { attribute, sentence, blends } = learned;
  const rows = blends.map(({ label, noted, foretold }) => ({
    label,
    said: noted.mean.toFixed(1),
    noted: {
      mean: noted.mean,
      low: Math.max(0, noted.mean - 2 * noted.sd),
      high: Math.min(10, noted.mean + 2 * noted.sd),
    },
    plain: foretold.mean,
    law: foretold[law],
  }));
  return (
    <Figure
      title={`${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}`}
      name={name}
      note={`Dot: ${attributeName(attribute)} as noted, with two spreads to both sides. Ring: the mean of its parts. Stroke: ${LAWS[law].toLowerCase()}. 0 to 10.`}
      draw={(width) => drawForetold(rows, width)}
      table={{
        heads: ["Blend", "Noted", "The mean", LAWS[law]],
        rows: blends.map(({ label, noted, foretold }) => [
          label,
          `${noted.mean.toFixed(1)} ± ${noted.sd.toFixed(1)}`,
          foretold.mean.toFixed(1),
          foretold[law].toFixed(1),
        ]),
      }}
    />
  );
}
