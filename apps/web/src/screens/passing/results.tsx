import type { PlacesFound, Recipe, RecipeResults, ResultMade } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { printAbv, printDay, printParts } from "../../figures/index.ts";
import {
  announce,
  AreaField,
  Broken,
  Busy,
  Button,
  Form,
  LinkButton,
  NumberHero,
  Page,
  Section,
  TextField,
  Tick,
} from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import "./passing.css";

/** What kitchens found of a recipe, this one and others; and what came of one that was passed on, to be sent back. */
export default function ResultsPage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id, recipe: params["recipe"] ?? "" };
  const recipe = useAsk("getRecipe", { at });
  const results = useAsk("getRecipeResults", { at });
  const name = recipe.state === "here" ? recipe.answer.name : "Recipe";
  const passedOn =
    recipe.state === "here" &&
    ((recipe.answer.latest.lineage?.[0]?.sha256 ?? null) !== null ||
      recipe.answer.latest.slots.some(({ from }) => from !== undefined));
  return (
    <Page
      title={`${name} in other kitchens`}
      back={{ to: `/h/${household.id}/recipes/${at.recipe}`, label: name }}
      actions={<LinkButton to={`/h/${household.id}/take-in`}>Take in a result</LinkButton>}
    >
      {results.state === "busy" && <Busy what="what was found" />}
      {results.state === "broken" && <Broken asked={results} title="The results could not be fetched" />}
      {results.state === "here" && <Pooled results={results.answer} onGone={() => results.again()} />}
      {recipe.state === "here" && passedOn && <SendBack recipe={recipe.answer} />}
    </Page>
  );
}

function Pooled({ results, onGone }: { readonly results: RecipeResults; readonly onGone: () => void }) {
  const household = useHousehold();
  const remove = useSay("removeResult");
  const { kitchens, liked, close, said, passedOn, headline } = results;
  const gone = async (result: string): Promise<void> => {
    const at = { household: household.id, recipe: results.recipeId, result };
    if ((await remove.send({ at })) !== null) onGone();
  };
  return (
    <>
      <Section title="All together">
        <p className="headline">{headline}</p>
        {liked !== null && <Places of={liked} what="Put first" />}
        {close !== null && <Places of={close} what="Put closest to the target" />}
        {said.map((text) => (
          <p key={text} className="soft small">
            {text}
          </p>
        ))}
        <p className="soft small">
          {passedOn === 0
            ? "It has not been passed on from here yet."
            : `It went out from here in ${passedOn === 1 ? "one form" : `${passedOn} forms`}; a result that names one of them finds its way by itself.`}
        </p>
      </Section>
      {kitchens.map((kitchen) => (
        <Section
          key={kitchen.resultId ?? "here"}
          title={kitchen.resultId === null ? "Here" : (kitchen.kitchen ?? "A kitchen that gave no name")}
        >
          {kitchen.receivedAt !== null && <p className="soft small">Came {printDay(kitchen.receivedAt)}.</p>}
          {kitchen.liked !== null && <p>{kitchen.liked.sentence}</p>}
          {kitchen.close !== null && <p>{kitchen.close.sentence}</p>}
          {kitchen.liked === null && kitchen.close === null && <p>It sent no blind flight.</p>}
          {kitchen.slots.length > 0 && (
            <ol className="lines">
              {kitchen.slots.map((slot) => (
                <li key={slot.slot}>
                  <p>
                    <b>{printParts(slot.parts)}</b> {slot.label ?? "not told"}
                  </p>
                </li>
              ))}
            </ol>
          )}
          {(kitchen.abv !== null || kitchen.restDays !== null) && (
            <p className="soft small">
              {kitchen.abv !== null && `Watered to ${printAbv(kitchen.abv)}. `}
              {kitchen.restDays !== null && `Rested ${kitchen.restDays} days.`}
            </p>
          )}
          {kitchen.notes !== "" && <blockquote className="told-note">{kitchen.notes}</blockquote>}
          {kitchen.resultId !== null && (
            <div className="form-actions">
              <Button kind="quiet" busy={remove.busy} onClick={() => gone(kitchen.resultId ?? "")}>
                Take it out again
              </Button>
            </div>
          )}
        </Section>
      ))}
    </>
  );
}

function Places({ of, what }: { readonly of: PlacesFound; readonly what: string }) {
  return (
    <NumberHero
      label={what}
      value={`${of.first} of ${of.sheets}`}
      unit={of.sheets === 1 ? "sheet" : "sheets"}
      give={`luck gives ${of.byLuck.toFixed(1)}`}
      note={`${of.luck.words}; p = ${of.luck.p.toFixed(3)}, ${of.luck.method}. Put before ${Math.round(of.ahead * 100)} % of what stood beside it; luck, 50 %.`}
    />
  );
}

/** What came of a recipe that somebody passed on, as a text to send them. */
function SendBack({ recipe }: { readonly recipe: Recipe }) {
  const household = useHousehold();
  const say = useSay("makeResult");
  const [kitchen, setKitchen] = useState("");
  const [notes, setNotes] = useState("");
  const [withWhiskeys, setWithWhiskeys] = useState(true);
  const [withBeside, setWithBeside] = useState(false);
  const [made, setMade] = useState<ResultMade | null>(null);
  const send = async (): Promise<void> => {
    const at = { household: household.id, recipe: recipe.id };
    const body = {
      ...(kitchen.trim() === "" ? {} : { kitchen }),
      ...(notes.trim() === "" ? {} : { notes }),
      withWhiskeys,
      withBeside,
      address: location.origin,
    };
    setMade(await say.send({ at, body }));
  };
  return (
    <Section title="Send back what came of it">
      <p className="soft">
        For whoever passed it on: what you filled it with, where your tasters put it blind, what you say of
        it. Tasters go as numbers. Nothing is sent by itself: you get a link, and the same as a file.
      </p>
      <Form say={say} onSend={send} label="What to send back">
        <TextField
          label="What your kitchen is to be called"
          optional
          path={["kitchen"]}
          hint="Left empty, it is called by nothing."
          value={kitchen}
          onChange={setKitchen}
          input={{ maxLength: 120 }}
        />
        <AreaField label="What you say of it" optional path={["notes"]} value={notes} onChange={setNotes} />
        <Tick label="With the names of the whiskeys in it" value={withWhiskeys} onChange={setWithWhiskeys} />
        <Tick label="With the names of what stood beside it" value={withBeside} onChange={setWithBeside} />
        <div className="form-actions">
          <Button type="submit" kind={made === null ? "main" : "plain"} busy={say.busy}>
            Write the result
          </Button>
        </div>
      </Form>
      {made !== null && <Made made={made} name={recipe.name} />}
    </Section>
  );
}

function Made({ made, name }: { readonly made: ResultMade; readonly name: string }) {
  const sent = made.link ?? made.canonical;
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(sent);
      announce("Copied");
    } catch {
      // No clipboard outside a secure page: the text stands there to be marked.
      announce("Mark the text and copy it");
    }
  };
  const save = (): void => {
    const address = URL.createObjectURL(new Blob([made.canonical], { type: "application/json" }));
    const link = document.createElement("a");
    link.href = address;
    link.download = `result-of-${name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-")}.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
  };
  const sheets = made.result.flights.flatMap((flight) => flight.sheets).length;
  return (
    <>
      <p>
        {sheets === 0
          ? "It holds no ranking: this recipe's batches stood in no revealed flight yet."
          : `It holds ${sheets === 1 ? "one ranking" : `${sheets} rankings`} of ${made.result.flights.length === 1 ? "one flight" : `${made.result.flights.length} flights`}.`}
      </p>
      <textarea className="input sent" readOnly rows={5} aria-label="The result, to be sent" value={sent} />
      <div className="form-actions">
        <Button kind="main" onClick={copy}>
          {made.link === null ? "Copy it" : "Copy the link"}
        </Button>
        <Button onClick={save}>Save as a file</Button>
      </div>
    </>
  );
}
