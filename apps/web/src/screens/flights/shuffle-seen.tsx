import { shuffleWords } from "@partsproof/core/sensory";
import type { Finding } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { MatPhotoSeen } from "./mat-photo-seen.tsx";
import { whereEnded } from "./where-ended.ts";
import "./question.css";

/** Alone, after the reveal: how often a fair shuffle leaves the glasses as they were found. Never whether it was fair. */
export function ShuffleSeen({ finding }: { readonly finding: Finding }) {
  const ended = whereEnded(finding);
  if (ended === null) return finding.flight.pouring === "alone" ? <SetsShuffled finding={finding} /> : null;
  return (
    <Section title="What the shuffle left">
      <ul className="needs-list">
        {shuffleWords(ended).said.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p className="field-hint">
        Reckoned exactly, for glasses that stood in a row as they were poured, A first. Any order can come of
        a fair shuffle, and of none.
      </p>
      <MatPhotoSeen finding={finding} />
    </Section>
  );
}

/** Sets are mixed up one by one: so few glasses tell nothing of the shuffle, and no number is made of it. */
function SetsShuffled({ finding }: { readonly finding: Finding }) {
  if (finding.sets === null) return null;
  return (
    <Section title="What the shuffle left">
      <p>
        Each set was mixed up by itself, and then the sets. Where the few glasses of a set end says nothing of
        how they were shuffled.
      </p>
      <MatPhotoSeen finding={finding} />
    </Section>
  );
}
