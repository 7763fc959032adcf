import { abv20FromProof60F } from "@partsproof/core/alcoholometry";
import { proof60F } from "@partsproof/core/quantity";
import {
  type Corrected,
  readCelsius,
  readNumber,
  reckonCorrect,
  type Scale,
  type Typed as ReadText,
} from "../../bench/index.ts";
import { abvDigits, printAbv, proofDigits } from "../../figures/index.ts";
import { Choice, NumberHero, Section } from "../../parts/index.ts";
import { Blame, Figure, NoAnswer, Said, Waiting } from "./answer.tsx";
import { all, type JobProps } from "./job.ts";
import { ReadField, WarmthField } from "./read-field.tsx";
import { SendOn } from "./send-on.tsx";

const TITLE = "True strength";

interface ScaleFace {
  readonly label: string;
  readonly name: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  /** What its marks usually stand apart. */
  readonly division: string;
  readonly example: string;
  readonly most: number;
}
const SCALES: Readonly<Record<Scale, ScaleFace>> = {
  abv20: {
    label: "% at 20 °C",
    name: "reading",
    unit: "%",
    low: 0,
    high: 100,
    division: "1",
    example: "50",
    most: 10,
  },
  proof60F: {
    label: "US proof at 60 °F",
    name: "reading",
    unit: "proof",
    low: 0,
    high: 200,
    division: "1",
    example: "100",
    most: 10,
  },
  density20: {
    label: "density at 20 °C",
    name: "reading",
    unit: "kg/m³",
    low: 700,
    high: 1100,
    division: "1",
    example: "930",
    most: 20,
  },
};

/** A hydrometer's reading freed of temperature, and of what dissolved solids hide. */
export default function CorrectJob({ typed, set, tools }: JobProps) {
  const { fields } = typed;
  const scale = Object.hasOwn(SCALES, fields.correctScale) ? (fields.correctScale as Scale) : "abv20";
  const face = SCALES[scale];
  const read = {
    reading: readNumber(fields.correctReading, face),
    division: readNumber(fields.correctDivision, {
      name: "marks",
      unit: face.unit,
      low: 0.01,
      high: face.most,
    }),
    solids: readSolids(fields.correctSolids),
    celsius: readCelsius(fields.warmth),
  };
  return (
    <div className="reckon">
      <div className="reckon-in">
        <Choice
          label="The instrument reads"
          value={scale}
          onChange={(next) =>
            set({
              correctScale: next,
              correctReading: SCALES[next].example,
              correctDivision: SCALES[next].division,
            })
          }
          options={(Object.keys(SCALES) as Scale[]).map((one) => ({ value: one, label: SCALES[one].label }))}
        />
        <ReadField
          label={`Reading, ${face.unit}`}
          value={fields.correctReading}
          onChange={(correctReading) => set({ correctReading })}
          read={read.reading}
          hint="Read at the level of the liquid, not up where it climbs the stem"
        />
        <ReadField
          label={`Its marks stand apart by, ${face.unit}`}
          value={fields.correctDivision}
          onChange={(correctDivision) => set({ correctDivision })}
          read={read.division}
        />
        <WarmthField
          label="The liquid is at"
          value={fields.warmth}
          onChange={(warmth) => set({ warmth })}
          read={read.celsius}
        />
        <ReadField
          label="Dissolved solids, mg in 100 mL (if you know them)"
          value={fields.correctSolids}
          onChange={(correctSolids) => set({ correctSolids })}
          read={read.solids}
          hint="Oak, sugar, colour: what 100 mL leaves behind when dried, in mg. Whiskey has some 50 to 300 (common practice, no source). Never dry strong spirit over a flame."
        />
      </div>
      <Outcome read={all(read)} scale={scale} tools={tools} />
    </div>
  );
}

function readSolids(text: string): ReadText {
  if (text.trim() === "") return { ok: true, value: 0 };
  return readNumber(text, { name: "solids", unit: "mg in 100 mL", low: 0, high: 5000 });
}

interface OutcomeProps {
  readonly read: Readonly<Record<"reading" | "division" | "solids" | "celsius", number>> | null;
  readonly scale: Scale;
  readonly tools: JobProps["tools"];
}

function Outcome({ read, scale, tools }: OutcomeProps) {
  if (read === null) return <Waiting title={TITLE}>Waiting for a reading and a temperature.</Waiting>;
  const done = reckonCorrect({ ...read, scale, tools });
  if (!done.ok) return <NoAnswer title={TITLE} no={done} />;
  const { strength, proof } = done;
  const byProof = scale === "proof60F";
  const main = byProof ? proof : strength;
  const shift =
    scale === "density20" ? null : (byProof ? done.apparent.proof60F : done.apparent.abv20) - read.reading;
  return (
    <Section title={TITLE} className="reckon-out">
      <Said>
        <Figure hero label="Corrected" told={main} unit={byProof ? "proof" : "% vol"} />
      </Said>
      <Blame told={main} />
      <div className="numbers">
        {byProof ? (
          <Figure label="At 20 °C" told={strength} unit="% vol" />
        ) : (
          <Figure label="Proof (US, at 60 °F)" told={proof} unit="proof" />
        )}
        <NumberHero
          label="Density at this temperature"
          value={done.apparent.kgPerM3.toFixed(0)}
          unit="kg/m³"
          note={`${done.apparent.kgPerM3At20.toFixed(0)} at 20 °C`}
        />
      </div>
      {shift !== null && (
        <p className="reckon-average">
          {Math.abs(shift) < 0.05
            ? "At this temperature the instrument is right as it reads."
            : `The temperature alone makes it read ${Math.abs(shift).toFixed(1)} ${byProof ? "proof" : "points"} too ${shift < 0 ? "high" : "low"}: the liquid has ${shift < 0 ? "swollen" : "shrunk"}, the glass hardly.`}
        </p>
      )}
      <Solids done={done} mg={read.solids} />
      <SendOn
        carried={{ parts: [{ parts: 1, abv20: strength.exact }], waterTo: null, finalMl: null }}
        text={`Gauged at the bench: ${strength.value} % vol, give or take ${strength.by} (${proof.value} proof), reading ${read.reading} at ${read.celsius.toFixed(1)} °C.`}
      />
    </Section>
  );
}

const RULES = {
  as_read: "US law takes a hydrometer as it reads up to 400 mg.",
  add_obscuration: "US law adds it from 400 to 600 mg, as done here.",
  distil: "Above 600 mg US law has the spirit distilled first: take this figure as a guess.",
} as const;

/** What the solids hide, and when that matters. */
function Solids({ done, mg }: { readonly done: Corrected; readonly mg: number }) {
  const { solids, apparent } = done;
  if (solids === null) {
    return (
      <p className="soft small">
        Dissolved solids make a liquid denser, so it seems weaker: 100 mg in 100 mL hide 0.4 proof. That
        matters from about 13 mg on when a tenth of a proof counts, and hardly when your marks stand a whole
        one apart.
      </p>
    );
  }
  return (
    <p className="reckon-average">
      {mg} mg in 100 mL hide {proofDigits(solids.obscurationProof)} proof: it seemed{" "}
      {printAbv(apparent.abv20)}.{" "}
      {solids.matters ? RULES[solids.rule] : "Too little to change a tenth of a proof."}
      {!solids.inRange &&
        ` The rule was found for 80 to 100 proof (${abvDigits(abv20FromProof60F(proof60F(80)))} to ${abvDigits(abv20FromProof60F(proof60F(100)))} % vol); here it is a guess.`}
    </p>
  );
}
