import { Page, Section } from "../../parts/index.ts";
import "./about.css";

/** What can hurt, what the law keeps for others, and what this is. */
export default function About() {
  return (
    <Page title="Stay well" lead="Strong spirit is poison by the glass and fuel by the bottle.">
      <Section title="At the table">
        <ul className="about-list">
          <li>Only for people of legal drinking age where they are.</li>
          <li>Not in pregnancy, and not with medicines or illnesses that alcohol makes worse.</li>
          <li>Never before driving, and never before work with tools or machines.</li>
          <li>Have a spittoon and use it: tasting works without swallowing.</li>
          <li>
            Have water and food on the table. Keep pours small: around 10 mL a glass is common practice.
          </li>
          <li>Every flight says how much alcohol it holds, at most, for each taster.</li>
        </ul>
      </Section>
      {/* Flash points: interpolated from https://www.engineeringtoolbox.com/ethanol-water-d_989.html (by weight). */}
      <Section title="At the bench">
        <ul className="about-list">
          <li>
            The vapour of whiskey can catch fire: at 40 % vol from about 28 °C, at 60 % vol from about 24 °C,
            a warm room. No flames, no smoking, no hot plate; open a window.
          </li>
          <li>
            Oak in the bottle: untreated, food-grade, toasted or charred. No treated, glued or painted wood.
          </li>
          <li>No lead crystal for resting: spirit draws lead out of it, more with every week.</li>
          <li>Clean glass with a good stopper, labelled, out of the reach of children.</li>
        </ul>
      </Section>
      <Section title="What the law keeps for others">
        <p>
          This is for home use and not for sale. In many places blending, bottling, labelling, giving away or
          selling spirits is for licensed people only, and distilling at home is forbidden. Local law and the
          practice of the licensed trade decide; nothing here overrides them.
        </p>
      </Section>
      <Section title="How far to trust the numbers">
        <p>
          Strengths follow the density formula of OIML R 22 for ethanol and water at 20 °C. Labels may be off
          by 0.3 % vol, so no strength is shown with more than one decimal. Sugar, colour and wood extract are
          not counted. No blood alcohol is reckoned here, and no number here says that you may drive.
        </p>
      </Section>
      <p className="soft small">
        Letters: Literata and Atkinson Hyperlegible Next, both under the SIL Open Font License 1.1. Flash
        points are interpolated from a table by weight; treat them as a warning, not as a limit.
      </p>
    </Page>
  );
}
