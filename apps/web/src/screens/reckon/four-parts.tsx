import { readVolumeOf, reckonMix, reckonNudges } from "../../bench/index.ts";
import { abvDigits, printAbv, printMl } from "../../figures/index.ts";
import { LiquidColumn, Section } from "../../parts/index.ts";
import { Blame, Figure, NoAnswer, Said, Waiting } from "./answer.tsx";
import type { JobProps } from "./job.ts";
import { readRows, RowsField } from "./rows-field.tsx";
import { SendOn } from "./send-on.tsx";

const TITLE = "As it stands";

/** Parts stepped up and down, with what one more or one fewer of each does. Shares its liquids with the mix. */
export function FourParts({ typed, setRows, tools }: JobProps) {
  const { rows, fields } = typed;
  const read = readRows(rows);
  return (
    <div className="reckon">
      <div className="reckon-in">
        <RowsField rows={rows} onChange={setRows} most={Math.max(4, rows.length)} />
        <p className="soft small">The same liquids as in the mix; up to four here.</p>
      </div>
      <Outcome read={read} total={readVolumeOf(fields.mixTotal)} tools={tools} />
    </div>
  );
}

interface OutcomeProps {
  readonly read: ReturnType<typeof readRows>;
  readonly total: ReturnType<typeof readVolumeOf>;
  readonly tools: JobProps["tools"];
}

function Outcome({ read, total, tools }: OutcomeProps) {
  if (read === null || read.allZero) {
    return <Waiting title={TITLE}>Waiting for every strength, and for at least one part.</Waiting>;
  }
  const totalMl = total.ok ? total.value : 100;
  const done = reckonMix({ rows: read.rows, totalMl, celsius: 20, tools });
  if (!done.ok) return <NoAnswer title={TITLE} no={done} />;
  const { strength, mixture } = done;
  const nudges = reckonNudges(read.rows);
  return (
    <Section title={TITLE} className="reckon-out">
      <Said>
        <Figure hero label="Strength" told={strength} unit="% vol" />
      </Said>
      <Blame told={strength} />
      <table className="nudges">
        <caption className="unseen">
          Strength with one part fewer and one part more of each liquid, % vol
        </caption>
        <thead>
          <tr>
            <th scope="col">Liquid</th>
            <th scope="col">a part fewer</th>
            <th scope="col">a part more</th>
          </tr>
        </thead>
        <tbody>
          {read.rows.map((row, i) => (
            // oxlint-disable-next-line react/no-array-index-key -- liquids have no name here, only a place
            <tr key={i}>
              <th scope="row">{printAbv(row.abv20)}</th>
              <td>{nudges[i]?.less === null ? "none to take" : <b>{abvDigits(nudges[i]?.less ?? 0)}</b>}</td>
              <td>
                <b>{abvDigits(nudges[i]?.more ?? 0)}</b>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <LiquidColumn
        title={`${read.rows.map((row) => row.parts).join(" to ")} parts`}
        segments={read.rows.map((row) => ({
          amount: row.parts,
          amountText: String(row.parts),
          label: printAbv(row.abv20),
        }))}
      />
      <SendOn
        carried={{ parts: read.rows, waterTo: null, finalMl: mixture.volumeMl }}
        text={`What if, at the bench: ${strength.value} % vol, give or take ${strength.by}; ${printMl(mixture.volumeMl)}.`}
      />
    </Section>
  );
}
