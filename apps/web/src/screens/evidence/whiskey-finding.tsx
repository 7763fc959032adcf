import { useAsk } from "../../api.ts";
import type { ScreenProps } from "../screen.ts";
import { LearnedSection } from "../palate/learned-section.tsx";
import { WhiskeyProfiles } from "../profiles/whiskey-profiles.tsx";
import { ApartSection } from "./apart-section.tsx";
import { EvidencePage } from "./evidence-page.tsx";
import { MixUpsSection } from "./mix-ups-section.tsx";
import { RestsOn } from "./rests-on.tsx";
import { WordsSection } from "./words-section.tsx";
import { WorthsSection } from "./worths-section.tsx";

/** A whiskey as it was poured in flights. */
export default function WhiskeyFindingPage({ params }: ScreenProps) {
  const { household = "", whiskey = "" } = params;
  const asked = useAsk("getWhiskeyFinding", { at: { household, whiskey } });
  return (
    <EvidencePage
      asked={asked}
      waiting="what is known of the whiskey"
      household={household}
      lead={({ name }) => `${name}, wherever it was poured blind and revealed.`}
    >
      {(found) => (
        <>
          <MixUpsSection
            title="What it was taken for"
            known={found.named}
            mixUps={found.mixUps}
            name="whiskey"
            what={`its ${found.named?.guessed ?? 0} glasses`}
          />
          {found.worths !== null && (
            <WorthsSection worths={found.worths} title="Where it was ranked" name="whiskey" />
          )}
          <ApartSection apart={found.apart} name="whiskey" />
          <WhiskeyProfiles household={household} whiskey={whiskey} />
          <LearnedSection household={household} whiskey={whiskey} />
          <WordsSection
            words={found.words}
            scores={found.scores}
            title="What was said of it"
            here={`of ${found.name}`}
            elsewhere="of the glasses beside it"
            name="whiskey"
          />
          <RestsOn flights={found.flights} household={household} />
        </>
      )}
    </EvidencePage>
  );
}
