import { CONVENTIONAL_AIR, scaleReading } from "@partsproof/core/alcoholometry";
import { readCelsius, readGrams, readStrengthOf, readVolumeOf, reckonWeigh } from "../../bench/index.ts";
import { printAbv, printG, printMl } from "../../figures/index.ts";
import { Choice, NumberHero, Section } from "../../parts/index.ts";
import { Blame, Figure, NoAnswer, Said, Waiting } from "./answer.tsx";
import { all, type JobProps } from "./job.ts";
import { ReadField, WarmthField } from "./read-field.tsx";
import { SendOn } from "./send-on.tsx";

/** Millilitres to grams and back, at any temperature. */
export default function WeighJob({ typed, set, tools }: JobProps) {
  const { fields } = typed;
  const byMl = fields.weighWay !== "g";
  const read = {
    strength: readStrengthOf(fields.weighStrength),
    amount: byMl ? readVolumeOf(fields.weighAmount) : readGrams(fields.weighGrams),
    celsius: readCelsius(fields.warmth),
  };
  return (
    <div className="reckon">
      <div className="reckon-in">
        <Choice
          label="Which way"
          value={byMl ? "ml" : "g"}
          onChange={(weighWay) => set({ weighWay })}
          options={[
            { value: "ml", label: "mL to grams" },
            { value: "g", label: "grams to mL" },
          ]}
        />
        {byMl ? (
          <ReadField
            label="Volume"
            value={fields.weighAmount}
            onChange={(weighAmount) => set({ weighAmount })}
            read={read.amount}
            hint="As read at the temperature below"
          />
        ) : (
          <ReadField
            label="Weight"
            value={fields.weighGrams}
            onChange={(weighGrams) => set({ weighGrams })}
            read={read.amount}
          />
        )}
        <ReadField
          label="Strength"
          value={fields.weighStrength}
          onChange={(weighStrength) => set({ weighStrength })}
          read={read.strength}
          hint="40% or 80 proof; 0 for water"
        />
        <WarmthField
          label="The liquid is at"
          value={fields.warmth}
          onChange={(warmth) => set({ warmth })}
          read={read.celsius}
        />
        <Choice
          label="Weighed in"
          value={fields.weighIn}
          onChange={(weighIn) => set({ weighIn })}
          options={[
            { value: "air", label: "air: what a scale shows" },
            { value: "vacuum", label: "vacuum: the mass" },
          ]}
          hint="Air carries a little of it: a scale shows about a thousandth less."
        />
      </div>
      <Outcome read={all(read)} byMl={byMl} inAir={fields.weighIn !== "vacuum"} tools={tools} />
    </div>
  );
}

interface OutcomeProps {
  readonly read: { readonly strength: number; readonly amount: number; readonly celsius: number } | null;
  readonly byMl: boolean;
  readonly inAir: boolean;
  readonly tools: JobProps["tools"];
}

function Outcome({ read, byMl, inAir, tools }: OutcomeProps) {
  const title = byMl ? "What it weighs" : "What it measures";
  if (read === null)
    return <Waiting title={title}>Waiting for an amount, a strength and a temperature.</Waiting>;
  const { amount, celsius } = read;
  const done = reckonWeigh({
    amount: byMl ? { ml: amount } : { g: amount },
    abv20: read.strength,
    celsius,
    inAir,
    tools,
  });
  if (!done.ok) return <NoAnswer title={title} no={done} />;
  const { figure, weighed, at20, density } = done;
  return (
    <Section title={title} className="reckon-out">
      <Said>
        <Figure
          hero
          label={`${byMl ? printMl(amount) : printG(amount)} of ${printAbv(read.strength)} at ${celsius.toFixed(celsius % 1 === 0 ? 0 : 1)} °C`}
          told={figure}
          unit={byMl ? "g" : "mL"}
        />
      </Said>
      <Blame told={figure} />
      <div className="numbers">
        <Figure label="At 20 °C it measures" told={at20} unit="mL" />
        <Figure label="Density, by OIML R 22" told={density} unit="kg/m³" />
        <NumberHero
          label={inAir ? "Mass, without the air" : "A scale in air shows less by"}
          value={
            inAir
              ? weighed.massG.toFixed(2)
              : (weighed.massG - scaleReading(weighed.massG, weighed.kgPerM3, CONVENTIONAL_AIR)).toFixed(2)
          }
          unit="g"
        />
      </div>
      <SendOn
        carried={{ parts: [{ parts: 1, abv20: read.strength }], waterTo: null, finalMl: weighed.ml20 }}
        text={`Weighed at the bench: ${weighed.grams.toFixed(1)} g of ${printAbv(read.strength)} are ${weighed.ml20.toFixed(1)} mL at 20 °C.`}
      />
    </Section>
  );
}
