import "./verdict.css";

/** A tick, a cross, or an empty ring for no guess; the word for it stands beside it. */
export function Verdict({ right }: { readonly right: boolean | null }) {
  if (right === null) return <span className="verdict verdict-none" aria-hidden="true" />;
  return (
    <svg
      className={`verdict ${right ? "verdict-right" : "verdict-wrong"}`}
      viewBox="0 0 20 20"
      aria-hidden="true"
    >
      <circle cx="10" cy="10" r="9" />
      <path d={right ? "M5.500 10.500l3 3 6-7" : "M6.500 6.500l7 7M13.500 6.500l-7 7"} />
    </svg>
  );
}
