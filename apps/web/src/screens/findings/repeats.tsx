import type { Finding } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { PairPlot } from "../../plots/index.ts";
import { repeatedPours, repeatSentence } from "./repeated-pours.ts";

/** Where a whiskey was poured twice: whether the tasters agree with themselves. */
export function Repeats({ finding }: { readonly finding: Finding }) {
  const repeats = repeatedPours(finding);
  if (repeats.length === 0) return null;
  return (
    <Section title="The same in two glasses">
      {repeats.map((repeat) => (
        <PairPlot
          key={repeat.label}
          title={repeatSentence(repeat)}
          glasses={finding.flight.glassCount}
          pairs={repeat.pairs}
        />
      ))}
      <p className="soft small">
        Differences between other glasses that are no larger than these may be the taster and not the whiskey.
      </p>
    </Section>
  );
}
