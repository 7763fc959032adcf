import { readStrengthOf, readVolumeOf, reckonEvaporated } from "../../bench/index.ts";
import { printAbv, printMl, printShare } from "../../figures/index.ts";
import { Section } from "../../parts/index.ts";
import { Blame, Figure, NoAnswer, Said, Waiting } from "./answer.tsx";
import { all, type JobProps } from "./job.ts";
import { ReadField } from "./read-field.tsx";
import { SendOn } from "./send-on.tsx";

const TITLE = "What has gone";

/** What left a vessel, from level and strength before and after. */
export function Evaporated({ typed, set, tools }: JobProps) {
  const { fields } = typed;
  const read = {
    ml0: readVolumeOf(fields.beforeMl),
    s0: readStrengthOf(fields.beforeStrength),
    ml1: readVolumeOf(fields.afterMl),
    s1: readStrengthOf(fields.afterStrength),
  };
  return (
    <div className="reckon">
      <div className="reckon-in">
        <ReadField
          label="Level before"
          value={fields.beforeMl}
          onChange={(beforeMl) => set({ beforeMl })}
          read={read.ml0}
          hint="At 20 °C, or both on days as warm as each other"
        />
        <ReadField
          label="Strength before"
          value={fields.beforeStrength}
          onChange={(beforeStrength) => set({ beforeStrength })}
          read={read.s0}
        />
        <ReadField
          label="Level now"
          value={fields.afterMl}
          onChange={(afterMl) => set({ afterMl })}
          read={read.ml1}
        />
        <ReadField
          label="Strength now"
          value={fields.afterStrength}
          onChange={(afterStrength) => set({ afterStrength })}
          read={read.s1}
        />
      </div>
      <Outcome read={all(read)} tools={tools} />
    </div>
  );
}

interface OutcomeProps {
  readonly read: Readonly<Record<"ml0" | "s0" | "ml1" | "s1", number>> | null;
  readonly tools: JobProps["tools"];
}

function Outcome({ read, tools }: OutcomeProps) {
  if (read === null) return <Waiting title={TITLE}>Waiting for two levels and two strengths.</Waiting>;
  const before = { ml: read.ml0, abv20: read.s0 };
  const after = { ml: read.ml1, abv20: read.s1 };
  const done = reckonEvaporated({ before, after, tools });
  if (!done.ok) return <NoAnswer title={TITLE} no={done} />;
  const { gone, ethanolG, waterG, level } = done;
  const unsure = Number(ethanolG.by) >= gone.ethanolG;
  return (
    <Section title={TITLE} className="reckon-out">
      <Said>
        <Figure
          hero
          label="Alcohol gone"
          told={ethanolG}
          unit="g"
          note={`${printShare(gone.ethanolShare)} of what there was`}
        />
      </Said>
      <Blame told={ethanolG} />
      <div className="numbers">
        <Figure label={gone.waterG < 0 ? "Water: came in if below 0" : "Water gone"} told={waterG} unit="g" />
        <Figure label="Level lost" told={level} unit="mL" />
      </div>
      <p className="reckon-average">
        {unsure
          ? "That is within what you measure with: it cannot be told from none."
          : gone.waterG < 0
            ? "Alcohol left and water came in: a damp room."
            : read.s1 > read.s0
              ? "More water left than alcohol, for what there was of each: it grew stronger, as in a dry room."
              : "More alcohol left than water, for what there was of each: it grew weaker, as in a damp room or by an open neck."}
      </p>
      <SendOn
        carried={{ parts: [{ parts: 1, abv20: read.s1 }], waterTo: null, finalMl: null }}
        text={`Evaporated, by the bench: from ${printMl(before.ml)} at ${printAbv(before.abv20)} to ${printMl(after.ml)} at ${printAbv(after.abv20)}: ${ethanolG.value} g of alcohol, give or take ${ethanolG.by}.`}
      />
    </Section>
  );
}
