import type { Sheet } from "@partsproof/house/protocol";

export type StepName = "sets" | "first" | "second" | "names" | "rank" | "lock";

interface Step {
  readonly step: StepName;
  readonly short: string;
  readonly long: string;
}

const NAMES: readonly Step[] = [
  { step: "first", short: "First", long: "First pass" },
  { step: "second", short: "Second", long: "Second pass" },
  { step: "names", short: "Names", long: "Names" },
  { step: "rank", short: "Rank", long: "Ranking" },
  { step: "lock", short: "Lock", long: "Locking" },
];

/** The steps of a sheet by what it asks. In sets the answer comes first; notes are welcome, once. */
export function stepsOf(asks: Sheet["asks"]): readonly Step[] {
  if (asks.answers !== null) {
    const rounds = asks.answers === "ranking";
    return [
      { step: "sets", short: rounds ? "Rounds" : "Sets", long: rounds ? "Rounds" : "Sets" },
      { step: "first", short: "Notes", long: "Notes" },
      ...NAMES.filter(({ step }) => step === "lock"),
    ];
  }
  return NAMES.filter(
    ({ step }) => (step !== "names" || asks.guesses) && (step !== "rank" || asks.ranking !== null),
  );
}

export interface StepNavProps {
  readonly steps: readonly Step[];
  readonly at: StepName;
  readonly onStep: (step: StepName) => void;
  /** How far each is, in a word or two. */
  readonly progress: Readonly<Record<StepName, string>>;
}

/** The steps of the sheet under the thumb, in any order, each with how far it is. */
export function StepNav({ steps, at, onStep, progress }: StepNavProps) {
  return (
    <nav className="steps no-paper" aria-label="Steps of the sheet">
      <ol style={{ gridTemplateColumns: `repeat(${steps.length}, 1fr)` }}>
        {steps.map(({ step, short, long }) => (
          <li key={step}>
            <button
              type="button"
              aria-current={at === step ? "step" : undefined}
              onClick={() => onStep(step)}
            >
              <span aria-hidden="true">{short}</span>
              <span className="unseen">{long}</span>
              {progress[step] !== "" && <span className="steps-far"> {progress[step]}</span>}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
