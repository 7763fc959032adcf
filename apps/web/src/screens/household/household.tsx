import { useState } from "react";
import { useSay } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { announce, Button, Choice, Form, LinkButton, Page, Section, TextField } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { chooseTheme, useThemeChoice } from "../../theme/choice.ts";
import { CurrencyField } from "./currency-field.tsx";
import { KeepAndRestore } from "./keep-and-restore.tsx";
import { Remove } from "./remove.tsx";
import { Tasters } from "./tasters.tsx";

/** The household: its name, who tastes, the file with everything, and the end of it. */
export default function HouseholdPage() {
  const household = useHousehold();
  const theme = useThemeChoice();
  return (
    <Page
      title="Household"
      lead={
        <>
          {household.name}, begun {printDay(household.createdAt)}
          {household.demo && ". Everything in it is invented"}
        </>
      }
      actions={
        <>
          <LinkButton to="/door">The door</LinkButton>
          <LinkButton to="/?choose">Another household</LinkButton>
        </>
      }
    >
      <Section title="Name and money">
        <Names />
      </Section>
      <Section title="Tasters">
        <Tasters />
      </Section>
      <Section title="Its own words">
        <p>
          What you mean by a word, so that every note is read your way: by “attic”, old wood; by “lovely”,
          nothing.
        </p>
        <LinkButton to={`/h/${household.id}/household/words`}>The household’s words</LinkButton>
      </Section>
      <Section title="Its calendar">
        <p>What is due on which day, in your own calendar: a file, or a secret link.</p>
        <LinkButton to={`/h/${household.id}/calendar`}>The calendar</LinkButton>
      </Section>
      <Section title="Theme">
        <Choice
          label="Theme"
          quietLabel
          value={theme}
          onChange={chooseTheme}
          options={[
            { value: "system", label: "As the device" },
            { value: "light", label: "Paper" },
            { value: "dark", label: "Warm dark" },
          ]}
        />
      </Section>
      <Section title="Keep a copy">
        <KeepAndRestore />
      </Section>
      <Section title="Remove the household">
        <Remove />
      </Section>
    </Page>
  );
}

function Names() {
  const household = useHousehold();
  const say = useSay("editHousehold");
  const [name, setName] = useState(household.name);
  const [currency, setCurrency] = useState(household.currency);
  const send = async (): Promise<void> => {
    const body = { version: household.version, name, currency };
    const saved = await say.send({ at: { household: household.id }, body });
    if (saved !== null) announce("Saved");
  };
  return (
    <Form say={say} onSend={send} label="Name and money">
      <div className="form-row">
        <TextField label="Name" path={["name"]} value={name} onChange={setName} input={{ maxLength: 120 }} />
        <CurrencyField value={currency} onChange={setCurrency} />
      </div>
      <p className="soft small">Changing the currency changes the sign, not the amounts.</p>
      <div className="form-actions">
        <Button type="submit" busy={say.busy}>
          Save
        </Button>
      </div>
    </Form>
  );
}
