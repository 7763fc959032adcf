import { sentence } from "../../parts/index.ts";
import type { Checked } from "./checked.ts";
import "./check.css";

/** What a check found, in words. */
export function Outcome({ seen }: { readonly seen: Checked }) {
  return (
    <section
      className={`check ${seen.findings.length === 0 ? "check-good" : "check-bad"}`}
      aria-live="polite"
    >
      <h2>
        <span aria-hidden="true">{seen.findings.length === 0 ? "✓" : "!"}</span> {seen.headline}
      </h2>
      {seen.findings.length > 0 && (
        <ul className="needs-list">
          {seen.findings.map((line) => (
            <li key={line}>{sentence(line)}</li>
          ))}
        </ul>
      )}
      {seen.unchecked.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
}
