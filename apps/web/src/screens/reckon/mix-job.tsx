import { readCelsius, readVolumeOf, reckonMix } from "../../bench/index.ts";
import { abvDigits, printAbv, printMl, printParts } from "../../figures/index.ts";
import { LiquidColumn, NumberHero, Section } from "../../parts/index.ts";
import { Blame, Figure, NoAnswer, Said, Waiting } from "./answer.tsx";
import { all, type JobProps } from "./job.ts";
import { ReadField, WarmthField } from "./read-field.tsx";
import { readRows, RowsField } from "./rows-field.tsx";
import { SendOn } from "./send-on.tsx";

const TITLE = "What comes of it";

/** Parts and strengths in, strength and proof out. */
export default function MixJob({ typed, set, setRows, tools }: JobProps) {
  const { fields, rows } = typed;
  const read = { total: readVolumeOf(fields.mixTotal), celsius: readCelsius(fields.warmth) };
  return (
    <div className="reckon">
      <div className="reckon-in">
        <RowsField rows={rows} onChange={setRows} />
        <ReadField
          label="Poured in all"
          value={fields.mixTotal}
          onChange={(mixTotal) => set({ mixTotal })}
          read={read.total}
          hint="Before it shrinks: the parts added up. 750 mL, 70 cl or 2 oz."
        />
        <WarmthField value={fields.warmth} onChange={(warmth) => set({ warmth })} read={read.celsius} />
      </div>
      <Outcome read={all(read)} rows={readRows(rows)} typedRows={rows} tools={tools} />
    </div>
  );
}

interface OutcomeProps {
  readonly read: { readonly total: number; readonly celsius: number } | null;
  readonly rows: ReturnType<typeof readRows>;
  readonly typedRows: JobProps["typed"]["rows"];
  readonly tools: JobProps["tools"];
}

function Outcome({ read, rows, typedRows, tools }: OutcomeProps) {
  if (read === null || rows === null || rows.allZero) {
    return (
      <Waiting title={TITLE}>
        {rows?.allZero === true
          ? "All parts are zero. Give at least one liquid a part."
          : "Waiting for every strength, the amount poured and the temperature."}
      </Waiting>
    );
  }
  const done = reckonMix({ rows: rows.rows, totalMl: read.total, celsius: read.celsius, tools });
  if (!done.ok) return <NoAnswer title={TITLE} no={done} />;
  const { mixture, strength, proof, volume } = done;
  const off = mixture.abv20 - mixture.naiveAbv20;
  const warm = Math.abs(read.celsius - 20) >= 0.5;
  return (
    <Section title={TITLE} className="reckon-out">
      <Said>
        <Figure hero label="Strength" told={strength} unit="% vol" />
      </Said>
      <Blame told={strength} />
      <div className="numbers">
        <Figure label="Proof (US)" told={proof} unit="proof" />
        <Figure
          label="Volume at 20 °C"
          told={volume}
          unit="mL"
          {...(warm ? { note: `${printMl(done.readMl)} as read at ${read.celsius.toFixed(0)} °C` } : {})}
        />
        <NumberHero
          label={mixture.contractionMl >= 0 ? "Shrinks by" : "Swells by"}
          value={Math.abs(mixture.contractionMl).toFixed(1)}
          unit="mL"
          note={`of ${printMl(mixture.sumMl)} poured`}
        />
      </div>
      <LiquidColumn
        title={`The mix: ${typedRows.map((row) => `${printParts(row.parts)} at ${row.strength}`).join(", ")}`}
        segments={typedRows.map((row, i) => ({
          amount: row.parts,
          amountText: String(row.parts),
          label: printAbv(rows.rows[i]?.abv20 ?? 0),
          sub: printMl(done.pouredMl[i] ?? 0),
        }))}
      />
      <p className="reckon-average">
        Averaging the strengths would say {abvDigits(mixture.naiveAbv20)} %
        {Math.abs(off) < 0.005
          ? ", the same to a hundredth."
          : `, which is ${Math.abs(off).toFixed(2)} points too ${off > 0 ? "low" : "high"}.`}
      </p>
      <SendOn
        carried={{ parts: rows.rows, waterTo: null, finalMl: mixture.volumeMl }}
        text={`Mixed at the bench: ${strength.value} % vol, give or take ${strength.by}; ${printMl(mixture.volumeMl)}.`}
      />
    </Section>
  );
}
