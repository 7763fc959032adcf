import { type BodyOf, decodeText, type ShelfListPreview } from "@partsproof/house/protocol";
import { useState } from "react";
import { api, asRefusal, useSay } from "../../api.ts";
import { announce, Button, IssueSummary, LinkButton, Page, Section, sentence } from "../../parts/index.ts";
import { offerFile } from "../../plots/index.ts";
import { go } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { HowRead } from "./how-read.tsx";
import { ListedRows } from "./listed-rows.tsx";
import "./shelf-list.css";

type Draft = BodyOf<"previewShelfList">;

/** The shelf in and out as a list: looked at row by row, written only when it is accepted. */
export default function ShelfList() {
  const household = useHousehold();
  const at = { household: household.id };
  const look = useSay("previewShelfList");
  const take = useSay("acceptShelfList");
  const [draft, setDraft] = useState<Draft | null>(null);
  const [preview, setPreview] = useState<ShelfListPreview | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);

  const read = async (next: Draft): Promise<void> => {
    setDraft(next);
    const seen = await look.send({ at, body: next });
    if (seen === null) return;
    setPreview(seen);
    announce(`${seen.good} good rows, ${seen.wrong} with something wrong`);
  };
  const choose = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    setWrong(null);
    setPreview(null);
    await read({ text: decodeText(new Uint8Array(await file.arrayBuffer())).text });
  };
  const accept = async (): Promise<void> => {
    if (draft === null || preview === null) return;
    const taken = await take.send({ at, body: { ...draft, sha256: preview.sha256 } });
    if (taken === null) return;
    announce(`${taken.whiskeys} new whiskeys and ${taken.bottles} bottles taken in`);
    go(`/h/${household.id}/shelf`);
  };
  const save = async (as: "csv" | "json"): Promise<void> => {
    setWrong(null);
    try {
      const { name, type, text } = await api("exportShelf", { at, query: { as } });
      offerFile(name, new Blob([text], { type }));
      announce(`${name} is being saved`);
    } catch (error) {
      setWrong(asRefusal(error).message);
    }
  };
  return (
    <Page
      title="The shelf as a list"
      wide
      back={{ to: `/h/${household.id}/shelf`, label: "Shelf" }}
      lead="A list that you keep elsewhere, taken in; or this shelf, as a list."
    >
      <Section title="Take a list in">
        <p>
          Values with commas, semicolons or tabs between them (CSV), headings on the first line: name,
          strength, and what else there is. It is looked at first; nothing is written until you accept it.
        </p>
        <IssueSummary say={look} />
        <IssueSummary say={take} />
        <label className="button button-main list-file">
          Choose the list
          <input
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
            onChange={(event) => {
              void choose(event.target.files?.[0]);
              event.target.value = "";
            }}
          />
        </label>
        {preview !== null && draft !== null && (
          <>
            <p className="list-found">
              <b>{preview.good}</b> good {preview.good === 1 ? "row" : "rows"}, <b>{preview.wrong}</b> with
              something wrong{preview.blank > 0 && `, ${preview.blank} blank`}: {preview.newWhiskeys} new{" "}
              {preview.newWhiskeys === 1 ? "whiskey" : "whiskeys"}, {preview.bottles}{" "}
              {preview.bottles === 1 ? "bottle" : "bottles"}.
            </p>
            {preview.issues.map(({ message }) => (
              <p className="field-issue" role="alert" key={message}>
                {sentence(message)}
              </p>
            ))}
            <HowRead draft={draft} preview={preview} onChange={(next) => void read(next)} />
            <ListedRows rows={preview.rows} />
            {preview.good > 0 && (
              <div className="form-actions">
                <Button kind="main" busy={take.busy} onClick={() => void accept()}>
                  Take in the {preview.good} good {preview.good === 1 ? "row" : "rows"}
                </Button>
                <Button onClick={() => setPreview(null)}>Leave it</Button>
              </div>
            )}
          </>
        )}
      </Section>
      <Section title="Save this shelf as a list">
        <p>A row a bottle. Cells that a spreadsheet would run as a formula have a quote mark before them.</p>
        {wrong !== null && (
          <p className="field-issue" role="alert">
            {sentence(wrong)}
          </p>
        )}
        <div className="form-actions">
          <Button onClick={() => void save("csv")}>For a spreadsheet (CSV)</Button>
          <Button onClick={() => void save("json")}>For a program (JSON)</Button>
          <LinkButton to={`/h/${household.id}/shelf/paper`}>On paper</LinkButton>
        </div>
      </Section>
    </Page>
  );
}
