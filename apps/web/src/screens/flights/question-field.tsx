import { type QuestionId, QUESTIONS } from "@partsproof/core/sensory";
import { useId } from "react";
import type { Plan } from "./plan.ts";

/** How the question is poured here, where that does not go without saying. */
const HOW: Readonly<Partial<Record<QuestionId, string>>> = {
  tell_apart:
    "Here a set is three glasses: one whiskey twice, the other once. The taster names them; luck finds the single one 1 time in 3. Another evening, pour the other one twice.",
  changed:
    "Here a set is three glasses: one of the two twice, the other once. The sample kept from before must stand on the shelf as a vessel of its own.",
  how_close: "The target stands hidden among the glasses; each taster puts the likest first.",
  agree_with_myself:
    "Pour each of them twice; every glass has its own number, so nobody sees which are alike.",
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
              onChange={() => onChange({ ...plan, question: id })}
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
