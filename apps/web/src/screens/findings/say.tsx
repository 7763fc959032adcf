import type { Finding } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";

const LISTS = [
  { key: "canSay", head: "What this flight can say" },
  { key: "cannotSay", head: "What it cannot say" },
  { key: "designSaid", head: "How it was laid out" },
] as const;

/** What may be concluded from it and what may not, and what its layout left unbalanced. */
export function Say({ finding }: { readonly finding: Finding }) {
  const shown = LISTS.filter(({ key }) => finding[key].length > 0);
  if (shown.length === 0) return null;
  return (
    <Section title="What follows from it">
      <div className="say">
        {shown.map(({ key, head }) => (
          <section key={key}>
            <h3>{head}</h3>
            <ul className="finding-left">
              {finding[key].map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        ))}
      </div>
    </Section>
  );
}
