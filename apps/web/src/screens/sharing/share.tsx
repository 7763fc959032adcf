import { useState } from "react";
import { useAsk } from "../../api.ts";
import {
  announce,
  Broken,
  Busy,
  Button,
  Form,
  LinkButton,
  Page,
  Section,
  TextField,
  Tick,
} from "../../parts/index.ts";
import { offerFile } from "../../plots/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { savePicture } from "./save-picture.ts";
import { SharedLink } from "./shared-link.tsx";
import { type Passing, type Shared, useShared } from "./use-shared.ts";
import "./sharing.css";

const QUIET = { issues: [], tries: 0 } as const;

/** A recipe to be passed on without a service: what goes out, and as what. */
export default function ShareRecipe({ params }: ScreenProps) {
  const household = useHousehold();
  const recipe = params["recipe"] ?? "";
  const asked = useAsk("getRecipe", { at: { household: household.id, recipe } });
  const [withNote, setWithNote] = useState(false);
  const [names, setNames] = useState("");
  const [bottle, setBottle] = useState("700");
  const typed = Number(bottle.trim().replace(",", "."));
  const good = bottle.trim() !== "" && typed >= 1 && typed <= 100_000;
  const credits = names
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "");
  const shared = useShared({
    household: household.id,
    recipe,
    withNote,
    credits,
    bottleMl: good ? typed : 700,
  });
  const back = { to: `/h/${household.id}/recipes/${recipe}`, label: "The recipe" };
  return (
    <Page
      title={asked.state === "here" ? `Pass on: ${asked.answer.name}` : "Pass on"}
      lead="Parts, rules and the facts of its whiskeys. Never prices, stock or tasting notes."
      back={back}
    >
      <Form say={QUIET} quiet label="What goes out">
        <Tick label="The recipe’s own note too" value={withNote} onChange={setWithNote} />
        <TextField
          label="Who is to be named"
          hint="Names with commas between them, as they chose themselves. Nobody is named unless written here."
          value={names}
          onChange={setNames}
        />
        <TextField
          label="Amounts for a bottle of"
          unit="mL"
          value={bottle}
          onChange={setBottle}
          input={{ inputMode: "decimal" }}
          {...(good ? {} : { hint: "A bottle requires 1 to 100,000 mL; the amounts are for 700 mL." })}
        />
      </Form>
      {shared.state === "busy" && <Busy what="what goes out" />}
      {shared.state === "broken" && (
        <Broken
          asked={{ refusal: shared.refusal, again: () => location.reload() }}
          title="This recipe could not be passed on"
        />
      )}
      {shared.state === "here" && (
        <Ways passing={shared.passing} paper={`/h/${household.id}/recipes/${recipe}/card`} />
      )}
    </Page>
  );
}

function Ways({ passing, paper }: { readonly passing: Passing; readonly paper: string }) {
  const { card, square, file } = passing;
  const save = ({ name, type, text }: Shared): void => {
    offerFile(name, new Blob([text], { type }));
    announce(`${name} is being saved`);
  };
  const saveAs = async (as: Parameters<Passing["as"]>[0]): Promise<void> => save(await passing.as(as));
  const copy = async (as: "text" | "markdown"): Promise<void> => {
    const made = await passing.as(as);
    try {
      await navigator.clipboard.writeText(made.text);
      announce("Copied");
    } catch {
      // No clipboard outside a secure page.
      save(made);
    }
  };
  const json = card.name.replace(/\.svg$/u, ".json");
  return (
    <>
      <Section title="As a link">
        <SharedLink link={card.link} name={file.name} square={square?.text ?? null} most={card.square.most} />
      </Section>
      <Section title="As a file">
        <p>The page works from a disk, with no network, and reckons the amounts for any bottle.</p>
        <div className="form-actions">
          <Button kind="main" onClick={() => void saveAs("html")}>
            One page
          </Button>
          <Button
            onClick={() =>
              save({
                ...card,
                name: json,
                type: "application/json",
                text: `${JSON.stringify(file, null, 2)}\n`,
              })
            }
          >
            Recipe file
          </Button>
        </div>
      </Section>
      <Section title="On paper">
        <LinkButton to={paper}>A card: A6, or 3 × 5 in</LinkButton>
      </Section>
      <Section title="As words">
        <div className="form-actions">
          <Button onClick={() => void copy("text")}>Copy as text</Button>
          <Button onClick={() => void copy("markdown")}>Copy as Markdown</Button>
        </div>
      </Section>
      <Section title="As a picture">
        <img
          className="sharing-card"
          src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(card.text)}`}
          alt={`Card of ${file.name}: its parts as a column, each named`}
          width="1080"
          height="1350"
        />
        <div className="form-actions">
          <Button onClick={() => void savePicture(card)}>Save as PNG</Button>
          <Button onClick={() => save(card)}>Save as SVG</Button>
        </div>
      </Section>
    </>
  );
}
