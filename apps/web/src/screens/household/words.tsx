import type { Meaning, Word } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useAskAll, useSay } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import {
  announce,
  Broken,
  Busy,
  Button,
  Empty,
  Form,
  Page,
  Section,
  SelectField,
  TextField,
} from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { meaningName, meaningOptions } from "./meaning-options.tsx";
import "./words.css";

/** The household's own words: what is meant by each, who taught it and when; taught, changed and forgotten here. */
export default function WordsPage() {
  const household = useHousehold();
  const at = { household: household.id };
  const asked = useAsk("listWords", { at });
  return (
    <Page
      title="The household’s words"
      lead="Every note of this household is read by them, its guests’ too, and those written before."
      back={{ to: `/h/${household.id}/household`, label: "Household" }}
    >
      <Section title="Teach a word">
        <Teach />
      </Section>
      <Section title="Taught so far">
        {asked.state === "busy" && <Busy what="the words" />}
        {asked.state === "broken" && <Broken asked={asked} title="The words could not be fetched" />}
        {asked.state === "here" &&
          (asked.answer.items.length === 0 ? (
            <Empty title="No words of its own yet">
              Teach one above, or put a chip right on a sheet and say that you always mean it so.
            </Empty>
          ) : (
            <ul className="own-words">
              {asked.answer.items.map((word) => (
                <li key={word.phrase}>
                  <One word={word} />
                </li>
              ))}
            </ul>
          ))}
        <p className="soft small">
          A word taught on a sheet is that sheet’s own until its flight is revealed. What you say here holds
          over what sheets say.
        </p>
      </Section>
    </Page>
  );
}

function Teach() {
  const at = { household: useHousehold().id };
  const say = useSay("teachWord");
  const tasters = useAskAll("listTasters", { at });
  const [phrase, setPhrase] = useState("");
  const [means, setMeans] = useState<Meaning>("wood.old");
  const [taster, setTaster] = useState("");
  const send = async (): Promise<void> => {
    const body = { phrase, means, tasterId: taster === "" ? null : taster };
    const word = await say.send({ at, body });
    if (word === null) return;
    announce(`By “${word.phrase}” you mean ${meaningName(means)}`);
    setPhrase("");
  };
  return (
    <Form say={say} onSend={send} label="Teach a word">
      <div className="own-words-fields">
        <TextField
          label="By"
          path={["phrase"]}
          value={phrase}
          onChange={setPhrase}
          hint="One to nine words, as you say them"
          input={{ maxLength: 60, autoCapitalize: "none" }}
        />
        <SelectField
          label="we mean"
          path={["means"]}
          value={means}
          onChange={(to) => setMeans(to as Meaning)}
          options={meaningOptions}
        />
        <SelectField
          label="Whose word it is"
          path={["tasterId"]}
          value={taster}
          onChange={setTaster}
          options={
            <>
              <option value="">the household’s</option>
              {tasters.state === "here" &&
                tasters.answer.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
            </>
          }
        />
      </div>
      <div className="form-actions">
        <Button type="submit" kind="main" busy={say.busy}>
          Teach it
        </Button>
      </div>
    </Form>
  );
}

const whoOf = ({ taster, flight }: Word["history"][number]): string =>
  `${taster ?? "the household"}${flight === null ? "" : `, at ${flight}`}`;

const saidOf = ({ means, state }: Word): string =>
  means !== null
    ? meaningName(means)
    : state === "two ways"
      ? "taught two ways: read as anybody would until you say"
      : "forgotten: read as anybody would";

function One({ word }: { readonly word: Word }) {
  const at = { household: useHousehold().id };
  const say = useSay("teachWord");
  const forget = useSay("forgetWord");
  const [to, setTo] = useState<Meaning | null>(null);
  const { phrase, means, state, otherwise, history } = word;
  const teach = async (meaning: Meaning): Promise<void> => {
    const saved = await say.send({
      at,
      body: { phrase, means: meaning, ...(means === null ? {} : { instead: means }) },
    });
    if (saved === null) return;
    announce(`By “${phrase}” you mean ${meaningName(meaning)}`);
    setTo(null);
  };
  return (
    <div className="own-word">
      <p>
        <span className="own-word-phrase">“{phrase}”</span>{" "}
        <span className={means === null ? "soft" : ""}>{saidOf(word)}</span>
      </p>
      {otherwise.length > 0 && (
        <p className="own-word-otherwise">
          <span>Sheets say:</span>
          {otherwise.map((meaning) => (
            <Button key={meaning} kind="quiet" onClick={() => void teach(meaning)}>
              {meaningName(meaning)}
              <span className="unseen"> by “{phrase}”</span>
            </Button>
          ))}
        </p>
      )}
      {to === null ? (
        <div className="own-word-actions">
          <Button kind="quiet" onClick={() => setTo(means ?? otherwise[0] ?? "wood.old")}>
            Change<span className="unseen"> “{phrase}”</span>
          </Button>
          {state !== "forgotten" && (
            <Button
              kind="quiet"
              busy={forget.busy}
              onClick={() => {
                void forget
                  .send({ at, body: { phrase } })
                  .then((done) => done !== null && announce(`“${phrase}” forgotten`));
              }}
            >
              Forget<span className="unseen"> “{phrase}”</span>
            </Button>
          )}
        </div>
      ) : (
        <Form say={say} onSend={() => teach(to)} label={`What “${phrase}” means`}>
          <SelectField
            label={`By “${phrase}” we mean`}
            path={["means"]}
            value={to}
            onChange={(value) => setTo(value as Meaning)}
            options={meaningOptions}
          />
          <div className="form-actions">
            <Button type="submit" busy={say.busy}>
              Save
            </Button>
            <Button onClick={() => setTo(null)}>Leave it</Button>
          </div>
        </Form>
      )}
      <details>
        <summary>
          {whoOf(history[0] ?? NOBODY)}, {printDay(history[0]?.at ?? "")}
          {history.length > 1 && ` and ${history.length - 1} before`}
        </summary>
        <ol className="own-word-history">
          {history.map((row) => (
            <li key={row.id}>
              {printDay(row.at)}: {whoOf(row)}: {row.means === null ? "forgotten" : meaningName(row.means)}
            </li>
          ))}
        </ol>
      </details>
    </div>
  );
}

const NOBODY: Word["history"][number] = {
  id: "",
  at: "",
  means: null,
  taster: null,
  flightId: null,
  flight: null,
};
