import type { TrialPlan, TrialSet } from "@partsproof/house/protocol";
import { abvDigits, printG, printMl } from "../../figures/index.ts";
import { LiquidColumn, Tag } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { findingPath } from "../flights/paths.ts";

/** Amounts in steps of a syringe or a scale, with no more digits than they have. */
const few = (x: number): string => String(Number(x.toFixed(2)));

export interface TrialGlassesProps {
  readonly plan: TrialPlan;
  /** The vials of trials that are poured, by number from 1. */
  readonly vials?: ReadonlyMap<number, Vial>;
  readonly household?: string;
  readonly poured?: ReadonlySet<number>;
}

type Vial = TrialSet["made"][number];

/** Every trial as a column of its parts, with what to measure and the strength. */
export function TrialGlasses({ plan, vials, poured, household = "" }: TrialGlassesProps) {
  return (
    <ol className="trial-glasses">
      {plan.trials.map((trial, n) => {
        const amounts = trial.g ?? trial.ml;
        const unit = trial.g === null ? "mL" : "g";
        const lines = plan.parts
          .map((name, i) => `${few(amounts[i] ?? 0)} ${unit} ${name}`)
          .filter((_, i) => (trial.ml[i] ?? 0) > 0);
        return (
          // oxlint-disable-next-line react/no-array-index-key -- trials are numbered and have no other name
          <li key={n}>
            <p className="trial-head">
              <span className="trial-number">{n + 1}</span>
              {trial.abv20 !== null && (
                <span>
                  <b>{abvDigits(trial.abv20)}</b> <span className="soft small">% vol</span>
                </span>
              )}
              <span className="soft small">
                {trial.g === null ? printMl(trial.totalMl) : printG(trial.g.reduce((a, b) => a + b, 0))} in
                all
              </span>
              {poured?.has(n + 1) === true && <Tag kind="strong">poured</Tag>}
            </p>
            <LiquidColumn
              size="list"
              title={`Trial ${n + 1}: ${lines.join(", ")}`}
              segments={plan.parts.map((name, i) => ({
                label: name,
                amount: trial.ml[i] ?? 0,
                amountText: `${few(amounts[i] ?? 0)} ${unit}`,
                tone: i + 1,
              }))}
            />
            <UnderTrial vial={vials?.get(n + 1)} household={household} />
          </li>
        );
      })}
    </ol>
  );
}

/** What is left in its vial, and how it did. */
function UnderTrial({ vial, household }: { readonly vial: Vial | undefined; readonly household: string }) {
  if (vial === undefined) return null;
  return (
    <div>
      <p className="soft small">
        <Link to={`/h/${household}/shelf/vessels/${vial.vesselId}`}>{vial.label}</Link>,{" "}
        {vial.leftMl < 0.05 ? "empty" : `${printMl(vial.leftMl)} left`}
      </p>
      {vial.flights.map((flight) => (
        <p key={flight.flightId} className="small">
          <Link to={findingPath(household, flight.flightId)}>{flight.name}</Link>: {flight.said}
        </p>
      ))}
    </div>
  );
}
