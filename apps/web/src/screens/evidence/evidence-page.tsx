import type { ReactNode } from "react";
import type { Asked } from "../../api.ts";
import { Broken, Busy, Page } from "../../parts/index.ts";
import { Headline } from "../findings/headline.tsx";
import { Invented } from "./invented.tsx";

interface Props<T extends { readonly headline: string }> {
  readonly asked: Asked<T>;
  readonly waiting: string;
  readonly household: string;
  readonly lead: (found: T) => ReactNode;
  readonly children: (found: T) => ReactNode;
}

/** A page whose title is the finding. */
export function EvidencePage<T extends { readonly headline: string }>(props: Props<T>) {
  const { asked, waiting, household, lead, children } = props;
  const back = { to: `/h/${household}/findings`, label: "Findings" };
  if (asked.state !== "here") {
    return (
      <Page title="Finding" back={back}>
        {asked.state === "busy" && <Busy what={waiting} />}
        {asked.state === "broken" && <Broken asked={asked} title="The finding could not be fetched" />}
      </Page>
    );
  }
  return (
    <Page
      title={asked.answer.headline}
      heading={<Headline text={asked.answer.headline} />}
      wide
      back={back}
      lead={lead(asked.answer)}
    >
      <Invented />
      {children(asked.answer)}
    </Page>
  );
}
