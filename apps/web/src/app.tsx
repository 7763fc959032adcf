import { Suspense, useEffect } from "react";
import { useAsk } from "./api.ts";
import { Announcer } from "./parts/announce.tsx";
import { Broken } from "./parts/broken.tsx";
import { Busy } from "./parts/busy.tsx";
import { FaultBoundary } from "./parts/fault-boundary.tsx";
import { Frame } from "./parts/frame.tsx";
import { Page } from "./parts/page.tsx";
import { usePlace } from "./router/index.ts";
import { findScreen, type Found } from "./screens/table.ts";
import { HouseholdContext, keepHousehold } from "./session/index.ts";
import { NotFound } from "./screens/not-found.tsx";

/** The screen at the present address. */
export function App() {
  const { path } = usePlace();
  const found = findScreen(path);
  if (found === null) {
    return (
      <Frame place={null}>
        <NotFound />
      </Frame>
    );
  }
  return (
    <>
      <FaultBoundary key={path}>
        {found.params["household"] === undefined ? <Shown found={found} /> : <InHousehold found={found} />}
      </FaultBoundary>
      <Announcer />
    </>
  );
}

function Shown({ found }: { readonly found: Found }) {
  const { screen, params, Screen } = found;
  return (
    <Frame place={screen.place} bare={screen.bare ?? false}>
      <Suspense fallback={<Busy what="the page" />}>
        <Screen params={params} />
      </Suspense>
    </Frame>
  );
}

/** Screens under /h/:household wait for the household and name it to all below. */
function InHousehold({ found }: { readonly found: Found }) {
  const id = found.params["household"] ?? "";
  const asked = useAsk("getHousehold", { at: { household: id } });
  const bare = found.screen.bare ?? false;
  const here = asked.state === "here";
  useEffect(() => {
    // A taster's or pourer's page opened on a visitor's phone does not move that phone's own household.
    if (here && !bare) keepHousehold(id);
  }, [here, bare, id]);
  if (asked.state === "here") {
    return (
      <HouseholdContext value={asked.answer}>
        <Shown found={found} />
      </HouseholdContext>
    );
  }
  return (
    <Frame place={found.screen.place} bare={bare}>
      <Page title="Parts & Proof">
        {asked.state === "busy" ? (
          <Busy what="the household" />
        ) : (
          <Broken asked={asked} title="This household could not be opened" home />
        )}
      </Page>
    </Frame>
  );
}
