import {
  type RecipeFile,
  type RecipeTakeInPreview,
  readRecipeLink,
  type ResultFile,
  type ResultPreview,
} from "@partsproof/house/protocol";
import { useEffect, useRef, useState } from "react";
import { api, asRefusal } from "../../api.ts";
import { AreaField, Button, Page, sentence } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { takeHanded } from "./handed.ts";
import { SeenRecipe } from "./seen-recipe.tsx";
import { SeenResult } from "./seen-result.tsx";
import "./passing.css";

const FORMAT: ResultFile["format"] = "parts-and-proof/result";

type Seen =
  | { readonly kind: "recipe"; readonly file: RecipeFile; readonly preview: RecipeTakeInPreview }
  | { readonly kind: "result"; readonly file: ResultFile; readonly preview: ResultPreview };

/** Takes in what somebody passed on: a recipe, or a result of one. It is looked at first; nothing is kept until somebody says so. */
export default function TakeIn() {
  const household = useHousehold();
  const [text, setText] = useState(takeHanded);
  const [seen, setSeen] = useState<Seen | null>(null);
  const [wrong, setWrong] = useState<readonly string[]>([]);
  const [busy, setBusy] = useState(false);
  const look = async (pasted: string): Promise<void> => {
    setBusy(true);
    setSeen(null);
    try {
      setSeen(await lookAt(household.id, pasted));
      setWrong([]);
    } catch (error) {
      setWrong(asRefusal(error).issues.map(({ message }) => message));
    } finally {
      setBusy(false);
    }
  };
  const lookInto = async (file: File): Promise<void> => {
    const read = await file.text();
    // A long file in a field would hold the page up.
    setText(read.length > 20_000 ? "" : read);
    await look(read);
  };
  const first = useRef(text);
  useEffect(() => {
    if (first.current === "") return;
    const pasted = first.current;
    first.current = "";
    void look(pasted);
  });
  return (
    <Page
      title="Take in"
      lead="A recipe that somebody passed on, or a result that somebody sent back. You see what it would add first."
      back={{ to: `/h/${household.id}/recipes`, label: "Recipes" }}
    >
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          void look(text);
        }}
      >
        <AreaField
          label="What you were sent"
          hint="Paste the link, whatever address it names, or the text of the file. Nothing is fetched from anywhere."
          value={text}
          onChange={setText}
          rows={4}
        />
        <div className="form-actions">
          <Button kind={seen === null ? "main" : "plain"} type="submit" busy={busy}>
            Look at it
          </Button>
          <label className="button button-plain file">
            Open a file
            <input
              type="file"
              accept="application/json,text/html,.json,.html"
              onChange={(event) => {
                const file = event.target.files?.[0];
                event.target.value = "";
                if (file !== undefined) void lookInto(file);
              }}
            />
          </label>
        </div>
      </form>
      {wrong.length > 0 && (
        <div className="issues" role="alert">
          <h2>{wrong.length === 1 ? "It cannot be read" : `${wrong.length} things are wrong with it`}</h2>
          <ul>
            {wrong.slice(0, 12).map((message) => (
              <li key={message}>{sentence(message)}</li>
            ))}
          </ul>
        </div>
      )}
      {seen?.kind === "recipe" && <SeenRecipe file={seen.file} preview={seen.preview} />}
      {seen?.kind === "result" && <SeenResult file={seen.file} preview={seen.preview} />}
    </Page>
  );
}

async function lookAt(household: string, text: string): Promise<Seen> {
  const at = { household };
  if (await isResult(text)) {
    const preview = await api("previewResult", { at, body: { text } });
    return { kind: "result", file: preview.result, preview };
  }
  const { recipe } = await api("openRecipe", { body: { text } });
  return { kind: "recipe", file: recipe, preview: await api("previewTakeIn", { at, body: { recipe } }) };
}

/** Whether what was sent, itself or in a link, says that it is a result. What it says else is the house's to judge. */
async function isResult(text: string): Promise<boolean> {
  const link = text.trim().startsWith("{") ? null : await readRecipeLink(text);
  if (link?.ok === false) return false;
  try {
    const value: unknown = JSON.parse(link?.text ?? text);
    return typeof value === "object" && value !== null && "format" in value && value.format === FORMAT;
  } catch {
    return false;
  }
}
