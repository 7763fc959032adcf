import type { ReactNode } from "react";
import { Button, Section } from "../../parts/index.ts";
import { offerFile } from "../../plots/index.ts";
import { Said } from "../evidence/said.tsx";

export type Fact = readonly [name: string, told: ReactNode];

interface Props {
  /** What was found, each with its number and method. */
  readonly sentences: readonly string[];
  /** Every number with its name; null is left out. */
  readonly facts: readonly Fact[];
  /** The whole answer, as the API and the command line give it. */
  readonly answer: object;
  /** Of the file. */
  readonly name: string;
  readonly children?: ReactNode;
}

/** An answer: what it says, drawn, every number, and all of it as a file. */
export function Told({ sentences, facts, answer, name, children }: Props) {
  return (
    <Section title="What it shows" className="reckon-out counts-told">
      <div aria-live="polite">
        {sentences.map((sentence) => (
          <Said key={sentence} sentence={sentence} />
        ))}
      </div>
      {children}
      <dl className="counts-facts">
        {facts
          .filter(([, told]) => told !== null)
          .map(([label, told]) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{told}</dd>
            </div>
          ))}
      </dl>
      <p>
        <Button
          onClick={() =>
            offerFile(
              `${name}.json`,
              new Blob([JSON.stringify(answer, null, 2)], { type: "application/json" }),
            )
          }
        >
          Save the answer as JSON
        </Button>
      </p>
    </Section>
  );
}
