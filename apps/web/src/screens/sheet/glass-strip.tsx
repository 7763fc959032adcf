export interface GlassStripProps {
  readonly title: string;
  readonly glasses: readonly { readonly code: string; readonly done: boolean; readonly word: string }[];
  readonly picked: string;
  readonly onPick: (code: string) => void;
}

/** The glasses in a row as they stand, small, to go from one to another; those done are filled and ticked. */
export function GlassStrip({ title, glasses, picked, onPick }: GlassStripProps) {
  return (
    <ol className="row" aria-label={`${title}: the glasses`}>
      {glasses.map(({ code, done, word }) => (
        <li key={code}>
          <button
            type="button"
            className={`row-one ${done ? "row-done" : ""}`}
            aria-current={picked === code ? "true" : undefined}
            onClick={() => onPick(code)}
          >
            <span className="unseen">Glass </span>
            {code}
            <span className="unseen">, {word}</span>
            {done && (
              <span className="row-tick" aria-hidden="true">
                ✓
              </span>
            )}
          </button>
        </li>
      ))}
    </ol>
  );
}
