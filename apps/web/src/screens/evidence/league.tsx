import { useAsk } from "../../api.ts";
import { Link } from "../../router/index.ts";
import type { ScreenProps } from "../screen.ts";
import { recipeFindingPath } from "./paths.ts";
import { countedWords } from "./counted-words.ts";
import { EvidencePage } from "./evidence-page.tsx";
import { WorthsSection } from "./worths-section.tsx";
import { Section } from "../../parts/index.ts";

/** Own blends beside each other, by every ranking of every revealed flight. */
export default function LeaguePage({ params }: ScreenProps) {
  const { household = "" } = params;
  const asked = useAsk("getLeague", { at: { household } });
  return (
    <EvidencePage
      asked={asked}
      waiting="the league"
      household={household}
      lead={({ counted }) =>
        `Blends of this house, by ${countedWords(counted, "ranking")}. Bought whiskeys stand in the sums, not in the league.`
      }
    >
      {(found) =>
        found.worths !== null && (
          <>
            <WorthsSection worths={found.worths} title="Own blends" name="league" />
            <Section title="Their recipes">
              <ul className="evidence-flights">
                {found.worths.items.map(({ key, label }) => {
                  const blend = found.blends.find((one) => one.key === key);
                  return (
                    <li key={key}>
                      <span className="name">{label}</span>
                      {blend !== undefined && blend.recipeId !== null && (
                        <>
                          {": "}
                          <Link to={recipeFindingPath(household, blend.recipeId)}>
                            {blend.recipe ?? ""}, over all its flights
                          </Link>
                        </>
                      )}
                    </li>
                  );
                })}
              </ul>
            </Section>
          </>
        )
      }
    </EvidencePage>
  );
}
