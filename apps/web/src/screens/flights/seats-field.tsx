import { Stepper } from "../../parts/index.ts";
import { MOST_TASTERS, type Plan } from "./plan.ts";

interface SeatsFieldProps {
  readonly plan: Plan;
  readonly onChange: (plan: Plan) => void;
}

/** Seats for guests, who come by a link or a code and name themselves. */
export function SeatsField({ plan, onChange }: SeatsFieldProps) {
  return (
    <div className="field">
      <span className="field-label">Seats for guests</span>
      <Stepper
        label="Seats for guests"
        value={plan.seats}
        min={0}
        max={MOST_TASTERS - plan.tasterIds.length}
        path={["seats"]}
        onChange={(seats) => onChange({ ...plan, seats })}
      />
      <p className="field-hint">
        Guests join on their own phones by a square code or eight letters, and give a name there.
      </p>
    </div>
  );
}
