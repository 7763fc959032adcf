import { attributeName } from "@partsproof/core/sensory";
import type { LearnedLevel, LearnedProfile } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { Broken, Busy, Section } from "../../parts/index.ts";
import { drawAgainst, Figure } from "../../plots/index.ts";
import { Link } from "../../router/index.ts";

/** What a whiskey tastes of to the household, learned: beside its label alone and the plain mean of its notes. */
export function LearnedSection({
  household,
  whiskey,
}: {
  readonly household: string;
  readonly whiskey: string;
}) {
  const asked = useAsk("getLearnedProfile", { at: { household, whiskey } });
  return (
    <Section title="What it tastes of to you, learned">
      {asked.state === "busy" && <Busy what="what was learned of it" />}
      {asked.state === "broken" && <Broken asked={asked} title="What was learned could not be fetched" />}
      {asked.state === "here" && <Learned profile={asked.answer} household={household} />}
    </Section>
  );
}

const reach = ({ mean, low, high }: LearnedLevel["learned"]): string =>
  `${mean.toFixed(1)} (${low.toFixed(1)} to ${high.toFixed(1)})`;

function Learned({ profile, household }: { readonly profile: LearnedProfile; readonly household: string }) {
  const { headline, levels, label, next } = profile;
  return (
    <>
      {levels.length === 0 ? (
        <p>{headline}</p>
      ) : (
        <Figure
          title={headline}
          name="learned-profile"
          note="Dot: learned from its label, its notes, and notes of mixes that held it. Ring: what its label alone says, weakly. Stroke: the plain mean of its notes. 0 to 10, lines hold 95 of 100."
          draw={(width) =>
            drawAgainst(
              levels.map((one) => ({
                label: attributeName(one.attribute),
                said: one.learned.mean.toFixed(1),
                one: one.label,
                other: one.learned,
                mark: one.raw?.mean ?? null,
              })),
              width,
            )
          }
          table={{
            heads: [label, "Learned", "Label alone", "Mean of notes", "Notes", "Notes of mixes"],
            rows: levels.map((one) => [
              attributeName(one.attribute),
              reach(one.learned),
              reach(one.label),
              one.raw === null ? "" : one.raw.mean.toFixed(1),
              String(one.raw?.notes ?? 0),
              String(one.inMixes),
            ]),
          }}
        />
      )}
      {next !== null && (
        <p>
          <strong>
            The next note of it would leave it off by {next.off.after.toFixed(1)} instead of{" "}
            {next.off.before.toFixed(1)}.
          </strong>{" "}
          {next.why}
        </p>
      )}
      <p className="soft small">
        Each taster’s use of the scale is learned and taken out. What nobody spoke of is unknown, and what
        labels say is common practice without a source.{" "}
        <Link to={`/h/${household}/shelf/next-note`}>What to taste next to learn most</Link>
      </p>
    </>
  );
}
