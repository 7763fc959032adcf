import type { Sheet } from "@partsproof/house/protocol";
import { GlassMat, LinkButton, Page } from "../../parts/index.ts";
import { AboutPhone } from "../join/about-phone.tsx";
import { alonePath } from "../flights/paths.ts";

/** Between taking the sheet and the pouring: which glasses will come, and how they stand. */
export function WaitToPour({ sheet, household }: { readonly sheet: Sheet; readonly household: string }) {
  const alone = sheet.pouring === "alone";
  return (
    <Page
      title={`${sheet.taster}’s sheet`}
      lead={
        alone
          ? `${sheet.flightName}. The glasses are not at their places yet.`
          : `${sheet.flightName}. The glasses are being poured; this page opens by itself when they stand ready.`
      }
    >
      <GlassMat
        title="Your glasses in the order to taste them"
        glasses={sheet.glasses.map(({ code }) => ({ code }))}
      />
      {alone ? (
        <div>
          <LinkButton kind="main" to={alonePath(household, sheet.flightId)}>
            Mark, pour and mix up
          </LinkButton>
        </div>
      ) : (
        <p>
          Stand them in this order from left to right. Every taster has other numbers and another order, so
          numbers tell nobody anything.
        </p>
      )}
      <AboutPhone />
    </Page>
  );
}
