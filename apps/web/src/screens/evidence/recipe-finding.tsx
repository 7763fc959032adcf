import { useAsk } from "../../api.ts";
import { Section } from "../../parts/index.ts";
import type { ScreenProps } from "../screen.ts";
import { RecipeProfiles } from "../profiles/recipe-profiles.tsx";
import { ApartSection } from "./apart-section.tsx";
import { EvidencePage } from "./evidence-page.tsx";
import { MixUpsSection } from "./mix-ups-section.tsx";
import { RestsOn } from "./rests-on.tsx";
import { WordsSection } from "./words-section.tsx";
import { WorthsSection } from "./worths-section.tsx";

/** Everything known of a recipe over all its flights. */
export default function RecipeFindingPage({ params }: ScreenProps) {
  const { household = "", recipe = "" } = params;
  const asked = useAsk("getRecipeFinding", { at: { household, recipe } });
  return (
    <EvidencePage
      asked={asked}
      waiting="what is known of the recipe"
      household={household}
      lead={({ name, batches }) =>
        `The recipe ${name}, its ${batches.length === 1 ? "batch" : `${batches.length} batches`} taken together, in every revealed flight.`
      }
    >
      {(found) => (
        <>
          {found.worths !== null && <WorthsSection worths={found.worths} title="Liked best" name="recipe" />}
          {found.closeness.map((worths) => (
            <WorthsSection
              key={worths.closeTo}
              worths={worths}
              title={`How close to ${worths.closeTo ?? ""}`}
              name="recipe-closeness"
            />
          ))}
          <ApartSection apart={found.apart} name="recipe" />
          <MixUpsSection
            title="What it was taken for"
            known={null}
            mixUps={found.mixUps}
            name="recipe"
            what="the glasses"
          />
          <RecipeProfiles household={household} recipe={recipe} />
          <WordsSection
            words={found.words}
            scores={found.scores}
            title="What was said of it"
            here={`of ${found.name}`}
            elsewhere="of the glasses beside it"
            name="recipe"
          />
          <Section title="Batch by batch">
            {found.batches.length === 0 && <p className="soft">No batch was made of it yet.</p>}
            <ul className="evidence-said">
              {found.batches.map(({ batchId, name, version, flights, sheets, scores }) => (
                <li key={batchId}>
                  <strong className="name">{name}</strong>, version {version}:{" "}
                  {sheets === 1 ? "1 sheet" : `${sheets} sheets`} in{" "}
                  {flights === 1 ? "1 flight" : `${flights} flights`}. {scores?.sentence}
                </li>
              ))}
            </ul>
            {found.batches.length > 1 && (
              <p className="soft small">
                Where batches stood in different flights, one score above the other does not show that it is
                better.
              </p>
            )}
          </Section>
          <RestsOn flights={found.flights} household={household} />
        </>
      )}
    </EvidencePage>
  );
}
