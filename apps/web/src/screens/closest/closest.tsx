import { useMemo } from "react";
import { useAsk, useAskAll } from "../../api.ts";
import { type Cellar, useCellar } from "../../cellar/index.ts";
import { type Shelf, shelfOf } from "../../closest/index.ts";
import { Broken, Busy, Empty, LinkButton, Page } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { Seek } from "./seek.tsx";

/** What comes closest to something, from what there is. */
export default function Closest() {
  const household = useHousehold();
  const cellar = useCellar();
  const vessels = useAskAll("listVessels", { at: { household: household.id } });
  const mixing = useAsk("getMixing", { at: { household: household.id } });
  const whiskeys = cellar.answer?.whiskeys;
  // Not waited for: it only changes what is sought where mixes have shown something.
  const learned = mixing.state === "here" ? mixing.answer.attributes : undefined;
  const shelf = useMemo(
    () =>
      whiskeys === undefined || vessels.answer === undefined
        ? null
        : shelfOf(whiskeys, vessels.answer, learned),
    [whiskeys, vessels.answer, learned],
  );
  const broken = [cellar, vessels].find(({ state }) => state === "broken");
  return (
    <Page
      title="What comes closest"
      wide
      lead="Which few bottles, in which small whole parts, come closest to what you are after."
      back={{ to: `/h/${household.id}/recipes`, label: "Recipes" }}
    >
      {broken !== undefined && <Broken asked={broken} title="The shelf could not be fetched" />}
      {broken === undefined && (shelf === null || cellar.answer === undefined) && <Busy what="the shelf" />}
      {shelf !== null && cellar.answer !== undefined && <Tasted shelf={shelf} cellar={cellar.answer} />}
    </Page>
  );
}

function Tasted({ shelf, cellar }: { readonly shelf: Shelf; readonly cellar: Cellar }) {
  const household = useHousehold();
  if (shelf.whiskeys.length > 0) return <Seek shelf={shelf} cellar={cellar} />;
  const first = cellar.whiskeys[0];
  return (
    <Empty
      title="Nothing is known of how your whiskeys taste"
      action={
        <LinkButton
          kind="main"
          to={
            first === undefined
              ? `/h/${household.id}/shelf/add`
              : `/h/${household.id}/shelf/whiskeys/${first.id}`
          }
        >
          {first === undefined ? "Add a bottle" : `Say what ${first.name} tastes of`}
        </LinkButton>
      }
    >
      <p>A whiskey can be searched once you have said how strong a few things are in it, 0 to 10.</p>
    </Empty>
  );
}
