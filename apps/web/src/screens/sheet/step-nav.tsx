export type StepName = "first" | "second" | "names" | "rank" | "lock";

const NAMES: readonly { readonly step: StepName; readonly short: string; readonly long: string }[] = [
  { step: "first", short: "First", long: "First pass" },
  { step: "second", short: "Second", long: "Second pass" },
  { step: "names", short: "Names", long: "Names" },
  { step: "rank", short: "Rank", long: "Ranking" },
  { step: "lock", short: "Lock", long: "Locking" },
];

export interface StepNavProps {
  readonly at: StepName;
  readonly onStep: (step: StepName) => void;
  /** How far each is, in a word or two. */
  readonly progress: Readonly<Record<StepName, string>>;
}

/** The steps of the sheet under the thumb, in any order, each with how far it is. */
export function StepNav({ at, onStep, progress }: StepNavProps) {
  return (
    <nav className="steps no-paper" aria-label="Steps of the sheet">
      <ol>
        {NAMES.map(({ step, short, long }) => (
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
