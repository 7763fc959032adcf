import type { AnswerOf, BodyOf, Issue } from "@partsproof/house/protocol";
import { type DragEvent, type ReactNode, useEffect, useRef, useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Form, sentence } from "../../parts/index.ts";
import { EXAMPLES } from "./examples.data.ts";
import { placeInJson } from "./place-in-json.ts";

type FileRoute = "countsRank" | "countsPairs" | "countsMixture";
const JOBS = { countsRank: "rank", countsPairs: "pairs", countsMixture: "mixture" } as const;

interface Props<N extends FileRoute> {
  readonly route: N;
  /** What the file holds, in a few words. */
  readonly holds: ReactNode;
  /** Fields that stand over what the file says; beside them its own do not count. */
  readonly over: object;
  readonly fields?: ReactNode;
  readonly children: (answer: AnswerOf<N>) => ReactNode;
}

/** A file of JSON, chosen, dropped or pasted, and what it shows. */
export function FileJob<N extends FileRoute>({ route, holds, over, fields, children }: Props<N>) {
  const say = useSay(route);
  const [text, setText] = useState("");
  const [name, setName] = useState<string | null>(null);
  const [isOver, setIsOver] = useState(false);
  const [answer, setAnswer] = useState<AnswerOf<N> | null>(null);
  const area = useRef<HTMLTextAreaElement>(null);

  const put = (next: string, file: string | null): void => {
    setText(next);
    setName(file);
    setAnswer(null);
    say.clear();
  };
  const take = async (file: File | undefined): Promise<void> => {
    if (file !== undefined) put(await file.text(), file.name);
  };
  const reckon = async (): Promise<void> => {
    setAnswer(null);
    const held = readJson(text);
    if ("issue" in held) return say.refuse([held.issue]);
    const isObject = typeof held.json === "object" && held.json !== null && !Array.isArray(held.json);
    const body = (isObject ? { ...held.json, ...over } : held.json) as BodyOf<N>;
    setAnswer(await say.send({ body }));
  };
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setIsOver(false);
    void take(event.dataTransfer.files[0]);
  };
  return (
    <div className="reckon">
      <Form say={say} quiet onSend={() => void reckon()} className="reckon-in" label="The file">
        <FileIssues
          issues={say.issues}
          tries={say.tries}
          text={text}
          onGo={({ from, to }) => {
            area.current?.focus();
            area.current?.setSelectionRange(from, to);
          }}
        />
        <div
          className="counts-drop"
          data-over={isOver ? "" : undefined}
          onDragOver={(event) => {
            event.preventDefault();
            setIsOver(true);
          }}
          onDragLeave={() => setIsOver(false)}
          onDrop={drop}
        >
          <p>{holds}</p>
          <div className="form-actions">
            <label className="button button-plain counts-file">
              Choose a file
              <input
                type="file"
                accept="application/json,.json"
                onChange={(event) => {
                  void take(event.target.files?.[0]);
                  event.target.value = "";
                }}
              />
            </label>
            <Button onClick={() => put(EXAMPLES[JOBS[route]], "an invented example")}>Show an example</Button>
          </div>
          <label className="field">
            <span className="field-label">
              {name === null ? "Or drop one here, or paste what it holds" : `What ${name} holds`}
            </span>
            <textarea
              ref={area}
              className="input"
              rows={10}
              spellCheck={false}
              autoCapitalize="off"
              value={text}
              onChange={(event) => put(event.target.value, name)}
            />
          </label>
        </div>
        {fields}
        <Button kind="main" type="submit" busy={say.busy}>
          Say what it shows
        </Button>
      </Form>
      {answer !== null && children(answer)}
    </div>
  );
}

function readJson(text: string): { readonly json: unknown } | { readonly issue: Issue } {
  try {
    return { json: JSON.parse(text) as unknown };
  } catch (error) {
    const why = text.trim() === "" ? "nothing" : error instanceof Error ? error.message : String(error);
    return {
      issue: {
        code: "json_unreadable",
        path: [],
        limit: "JSON (RFC 8259)",
        received: text.slice(0, 40),
        message: `the file requires JSON (RFC 8259), got ${why}`,
      },
    };
  }
}

interface IssuesProps {
  readonly issues: readonly Issue[];
  readonly tries: number;
  readonly text: string;
  readonly onGo: (place: { readonly from: number; readonly to: number }) => void;
}

/** What is wrong with the file, each line leading to its place in the text. */
function FileIssues({ issues, tries, text, onGo }: IssuesProps) {
  const box = useRef<HTMLDivElement>(null);
  // Once a try, as with any form.
  useEffect(() => box.current?.focus(), [tries]);
  if (issues.length === 0) return null;
  return (
    <div className="issues" ref={box} tabIndex={-1} role="alert">
      <h2>{issues.length === 1 ? "One thing to put right" : `${issues.length} things to put right`}</h2>
      <ul>
        {issues.map((issue) => {
          const key = `${issue.path.join("/")} ${issue.message}`;
          if (issue.path.length === 0) return <li key={key}>{sentence(issue.message)}</li>;
          const place = placeInJson(text, issue.path);
          return (
            <li key={key}>
              <button type="button" className="issues-to" onClick={() => onGo(place)}>
                Line {place.line}: {sentence(issue.message)}
              </button>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
