import { Suspense, useEffect } from "react";
import { useAskKept } from "./api.ts";
import { Announcer } from "./parts/announce.tsx";
import { Broken } from "./parts/broken.tsx";
import { Busy } from "./parts/busy.tsx";
import { FaultBoundary } from "./parts/fault-boundary.tsx";
import { Frame } from "./parts/frame.tsx";
import { Page } from "./parts/page.tsx";
import { usePlace } from "./router/index.ts";
import { findScreen, type Found } from "./screens/table.ts";
import { HouseholdContext, keepHousehold, useToken } from "./session/index.ts";
import { NotFound } from "./screens/not-found.tsx";

/** The screen at the present address. */
export function App() {
  const { path } = usePlace();
  useEffect(() => void import("./install/index.ts").then(({ keepApp }) => keepApp()), []);
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
        <AtPlace found={found} />
      </FaultBoundary>
      <Announcer />
    </>
  );
}

/** A page of a flight stands by itself: whoever came by a link reads that flight and nothing else of the household. */
function AtPlace({ found }: { readonly found: Found }) {
  const guest = useToken("guest", found.params["flight"] ?? "") !== undefined;
  const { bare = false, guests = false } = found.screen;
  if (found.params["household"] === undefined || bare) return <Shown found={found} bare={bare} />;
  return guests && guest ? <Shown found={found} bare /> : <InHousehold found={found} />;
}

function Shown({ found, bare = false }: { readonly found: Found; readonly bare?: boolean }) {
  const { screen, params, Screen } = found;
  return (
    <Frame place={screen.place} bare={bare}>
      <Suspense fallback={<Busy what="the page" />}>
        <Screen params={params} />
      </Suspense>
    </Frame>
  );
}

/** Screens under /h/:household wait for the household and name it to all below. */
function InHousehold({ found }: { readonly found: Found }) {
  const id = found.params["household"] ?? "";
  const asked = useAskKept("getHousehold", { at: { household: id } });
  const here = asked.state === "here";
  useEffect(() => {
    if (here) keepHousehold(id);
  }, [here, id]);
  if (asked.state === "here") {
    return (
      <HouseholdContext value={asked.answer}>
        <Shown found={found} />
      </HouseholdContext>
    );
  }
  return (
    <Frame place={found.screen.place}>
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
