import { readCelsius, readGrams, readVolumeOf, reckonSample } from "../../bench/index.ts";
import { Section } from "../../parts/index.ts";
import { Blame, Figure, NoAnswer, Said, Waiting } from "./answer.tsx";
import { all, type JobProps } from "./job.ts";
import { ReadField, WarmthField } from "./read-field.tsx";
import { SendOn } from "./send-on.tsx";

const TITLE = "How strong it is";

/** Strength of an unlabelled sample from what it weighs and what it measures. */
export function Sample({ typed, set, tools }: JobProps) {
  const { fields } = typed;
  const read = {
    g: readGrams(fields.sampleGrams),
    ml: readVolumeOf(fields.sampleMl),
    celsius: readCelsius(fields.warmth),
  };
  return (
    <div className="reckon">
      <div className="reckon-in">
        <ReadField
          label="The scale shows"
          value={fields.sampleGrams}
          onChange={(sampleGrams) => set({ sampleGrams })}
          read={read.g}
          hint="The sample alone: zero the scale with the empty glass on it"
        />
        <ReadField
          label="It measures"
          value={fields.sampleMl}
          onChange={(sampleMl) => set({ sampleMl })}
          read={read.ml}
        />
        <WarmthField
          label="The liquid is at"
          value={fields.warmth}
          onChange={(warmth) => set({ warmth })}
          read={read.celsius}
        />
      </div>
      <Outcome read={all(read)} tools={tools} />
    </div>
  );
}

interface OutcomeProps {
  readonly read: Readonly<Record<"g" | "ml" | "celsius", number>> | null;
  readonly tools: JobProps["tools"];
}

function Outcome({ read, tools }: OutcomeProps) {
  if (read === null)
    return <Waiting title={TITLE}>Waiting for a weight, a volume and a temperature.</Waiting>;
  const done = reckonSample({ ...read, tools });
  if (!done.ok) return <NoAnswer title={TITLE} no={done} />;
  const { strength, proof, density } = done;
  return (
    <Section title={TITLE} className="reckon-out">
      <Said>
        <Figure hero label="Strength" told={strength} unit="% vol" />
      </Said>
      <Blame told={strength} />
      <div className="numbers">
        <Figure label="Proof (US)" told={proof} unit="proof" />
        <Figure label="Density" told={density} unit="kg/m³" />
      </div>
      <p className="reckon-average">
        {Number(strength.by) >= 2
          ? "A thousandth of the volume is half a point of strength: with this measure it is hardly better than a guess. Weigh more of it, in a flask with one mark."
          : "A thousandth of the volume is half a point of strength; dissolved solids make it seem weaker."}
      </p>
      <SendOn
        carried={{ parts: [{ parts: 1, abv20: strength.exact }], waterTo: null, finalMl: null }}
        text={`Weighed at the bench: ${strength.value} % vol, give or take ${strength.by}.`}
      />
    </Section>
  );
}
