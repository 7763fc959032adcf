import type { ReactNode } from "react";
import { printAbv, printG, printMl } from "../../figures/index.ts";
import { made, type Pouring, sharesPoured, type Standing, WATER } from "../../weighing/index.ts";
import { Blame, Figure } from "../reckon/answer.tsx";
import { NumberHero, Section } from "../../parts/index.ts";

export interface DoneProps {
  readonly pouring: Pouring;
  readonly now: Standing;
  readonly end: ReactNode;
  readonly undo: ReactNode;
}

/** What was really made. */
export function Done({ pouring, now, end, undo }: DoneProps) {
  const what = made(pouring, now);
  if (what === null) {
    return (
      <>
        <header className="weigh-head">
          <h2 tabIndex={-1}>{now.poured.length === 0 ? "Nothing was poured" : "Too little to tell"}</h2>
        </header>
        <p className="soft">
          {now.poured.length === 0
            ? "The vessel is empty."
            : "What went in is no more than your scale may be off by."}
        </p>
        {undo !== null && <div className="form-actions">{undo}</div>}
      </>
    );
  }
  const shares = sharesPoured(pouring, now.pouredMl);
  return (
    <>
      <header className="weigh-head">
        <p className="soft">Poured</p>
        <h2 tabIndex={-1}>What was really made</h2>
      </header>
      <Figure hero label="Strength" told={what.strength} unit="% vol" />
      <Blame told={what.strength} />
      <div className="numbers">
        <Figure label="Volume at 20 °C" told={what.volume} unit="mL" />
        <Figure label="Proof (US)" told={what.proof} unit="proof" />
        <NumberHero label="Mass" value={what.massG.toFixed(0)} unit="g" />
      </div>
      {pouring.waterTo !== null && (
        <p className="soft">
          {now.waterMl > 0
            ? `With ${printMl(now.waterMl)} of water; ${printAbv(pouring.waterTo)} was wanted.`
            : `No water went in; ${printAbv(pouring.waterTo)} was wanted.`}
        </p>
      )}
      <Section title="Part by part">
        <table className="nudges">
          <caption className="unseen">
            What was poured of each part, and its share beside the recipe's
          </caption>
          <thead>
            <tr>
              <th scope="col">Part</th>
              <th scope="col">Poured</th>
              <th scope="col">Share (recipe)</th>
            </tr>
          </thead>
          <tbody>
            {shares.map(({ label, ml, share, plannedShare }, part) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                <td>
                  {printG(gramsOf(pouring, now, part))}
                  <br />
                  <span className="soft small">{printMl(ml)}</span>
                </td>
                <td>
                  {(100 * share).toFixed(1)}&nbsp;%
                  <br />
                  <span className="soft small">({(100 * plannedShare).toFixed(1)}&nbsp;%)</span>
                </td>
              </tr>
            ))}
            {now.waterMl > 0 && (
              <tr>
                <th scope="row">Water</th>
                <td>
                  {printG(now.poured.reduce((sum, one) => sum + (one.source === WATER ? one.g : 0), 0))}
                </td>
                <td className="soft">not a part</td>
              </tr>
            )}
          </tbody>
        </table>
      </Section>
      {end}
      {undo !== null && <div className="form-actions">{undo}</div>}
    </>
  );
}

const gramsOf = (pouring: Pouring, now: Standing, part: number): number =>
  now.poured.reduce((sum, one) => sum + (pouring.sources[one.source]?.part === part ? one.g : 0), 0);
