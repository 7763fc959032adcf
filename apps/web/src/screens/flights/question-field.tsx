import { type QuestionId, QUESTIONS } from "@partsproof/core/sensory";
import { useId } from "react";
import { type Plan, withQuestion } from "./plan.ts";

/** How the question is poured here, where that does not go without saying. */
const HOW: Readonly<Partial<Record<QuestionId, string>>> = {
  changed: "The sample kept from before must stand on the shelf as a vessel of its own.",
  how_close: "Each taster puts the likest first, and does not know which glass is the target itself.",
  agree_with_myself: "All glasses come twice, as two rounds with other numbers in another order.",
  which_is_which: "Afterwards they are put in order too, best first.",
};

interface QuestionFieldProps {
  readonly plan: Plan;
  readonly onChange: (plan: Plan) => void;
}

/** What the flight is to answer, each question with its sentence before it is chosen. */
export function QuestionField({ plan, onChange }: QuestionFieldProps) {
  const name = useId();
  return (
    <fieldset className="question">
      <legend className="unseen">What do you want to know?</legend>
      {(Object.keys(QUESTIONS) as QuestionId[]).map((id) => {
        const how = HOW[id];
        return (
          <label key={id} className="question-one">
            <input
              type="radio"
              name={name}
              checked={plan.question === id}
              aria-labelledby={`${name}-${id}-title`}
              aria-describedby={`${name}-${id}`}
              onChange={() => onChange(withQuestion(plan, id))}
            />
            <span className="question-title" id={`${name}-${id}-title`}>
              {QUESTIONS[id].title}
            </span>
            <span className="question-says" id={`${name}-${id}`}>
              {QUESTIONS[id].sentence}
              {plan.question === id && how !== undefined && <> {how}</>}
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}
