import { useEffect } from "react";
import { useAskAll } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { Broken, Busy, LinkButton, Page, SafetyNote, Section } from "../../parts/index.ts";
import { go, Link, usePlace } from "../../router/index.ts";
import { lastHousehold } from "../../session/index.ts";
import { Begin } from "./begin.tsx";
import { LoadDemo } from "./load-demo.tsx";
import "./front.css";

/** The way in: the household this device was last in, or a choice of households, or the first run. */
export default function Door() {
  const { query } = usePlace();
  const asked = useAskAll("listHouseholds", {});
  const choose = query.has("choose");
  const last = lastHousehold();
  const back = asked.state === "here" && !choose ? asked.answer.find(({ id }) => id === last) : undefined;
  useEffect(() => {
    if (back !== undefined) go(`/h/${back.id}`, { replace: true });
  }, [back]);

  if (asked.state === "busy" || back !== undefined) {
    return (
      <Page title="Parts & Proof">
        <Busy what="the households" />
      </Page>
    );
  }
  if (asked.state === "broken") {
    return (
      <Page title="Parts & Proof">
        <Broken asked={asked} title="The house did not answer" />
        <p>
          The <Link to="/reckon">quick reckoner</Link> works without it.
        </p>
      </Page>
    );
  }
  const households = asked.answer;
  const hasDemo = households.some((household) => household.demo);
  return (
    <Page
      title="Parts & Proof"
      heading={households.length === 0 ? "From the shelf to the reveal" : "Whose shelf?"}
      lead={
        households.length === 0
          ? "Blend what you own in small whole parts, make it, taste it blind, and see what you could really tell."
          : undefined
      }
    >
      {households.length > 0 && (
        <ul className="front-doors">
          {households.map((household) => (
            <li key={household.id}>
              <Link to={`/h/${household.id}`}>
                <span className="name">{household.name}</span>
                <span className="soft small">
                  {household.demo ? "invented, to look around in" : `begun ${printDay(household.createdAt)}`}
                </span>
              </Link>
            </li>
          ))}
        </ul>
      )}
      <div className="front-ways">
        <Section title="Begin my own">
          <Begin />
        </Section>
        {!hasDemo && (
          <Section title="Look around first">
            <LoadDemo />
          </Section>
        )}
        <Section title="Only a sum?">
          <p>Parts and strengths in, strength and proof out. No household needed.</p>
          <div>
            <LinkButton to="/reckon">Open the quick reckoner</LinkButton>
          </div>
        </Section>
      </div>
      <SafetyNote title="For people of legal drinking age, at home">
        <p>
          Not in pregnancy, never before driving, not for sale. <Link to="/about">How to stay well</Link>
        </p>
      </SafetyNote>
    </Page>
  );
}
