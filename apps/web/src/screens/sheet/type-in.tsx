import type { Flight, Sheet } from "@partsproof/house/protocol";
import { type KeyboardEvent, useId, useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { Broken, Busy, Button, Form, LinkButton, Page, TextField, Tick } from "../../parts/index.ts";
import { keep, keepToken, kept, useToken } from "../../session/index.ts";
import { flightPath, paperKey, sheetPath } from "../flights/paths.ts";
import type { ScreenProps } from "../screen.ts";
import { KeptMark, Notices } from "./kept-mark.tsx";
import { ClashPanel } from "./clash-panel.tsx";
import { readOrder, readPicks, withTypist } from "./read-paper.ts";
import {
  answerKey,
  type Fields,
  type FieldValue,
  guessIn,
  guessKey,
  noteKey,
  notesIn,
  pickedIn,
  RANKING,
  rankingIn,
  roundIn,
} from "./sheet-fields.ts";
import { useKeeper } from "./use-keeper.ts";
import "./sheet.css";
import "./type-in.css";

interface At {
  readonly [name: string]: string;
  readonly household: string;
  readonly flight: string;
  readonly sheet: string;
}

/** A paper sheet typed in by the host: one screen, in the order of the paper. */
export default function TypeIn({ params }: ScreenProps) {
  const household = params["household"] ?? "";
  const at: At = { household, flight: params["flight"] ?? "", sheet: params["sheet"] ?? "" };
  const token = useToken("sheet", at.sheet);
  const asked = useAsk("getFlight", { at: { household, flight: at.flight } });
  const back = { to: flightPath(household, at.flight), label: "The flight" };
  const line =
    asked.state === "here" ? asked.answer.sheets.find(({ sheetId }) => sheetId === at.sheet) : undefined;
  if (asked.state !== "here" || line === undefined) {
    return (
      <Page title="A paper sheet" back={back}>
        {asked.state === "busy" ? (
          <Busy what="the flight" />
        ) : asked.state === "broken" ? (
          <Broken asked={asked} title="The flight could not be fetched" />
        ) : (
          <p>There is no such sheet in this flight.</p>
        )}
      </Page>
    );
  }
  if (asked.answer.state !== "tasting" || (token === undefined && line.state !== "free")) {
    return (
      <Page title={`${line.taster}’s paper sheet`} back={back}>
        <p>
          {asked.answer.state !== "tasting"
            ? "A paper sheet is typed in once the glasses are poured and before the reveal."
            : "This sheet is on another phone. Free it first, from the flight’s page."}
        </p>
      </Page>
    );
  }
  return token === undefined ? (
    <Take flight={asked.answer} taster={line.taster} at={at} />
  ) : (
    <Written at={at} token={token} />
  );
}

const TYPIST = "typist";

function Take({ flight, taster, at }: { readonly flight: Flight; readonly taster: string; readonly at: At }) {
  const [typist, setTypist] = useState(kept(TYPIST) ?? "");
  const [ofAge, setOfAge] = useState(false);
  const say = useSay("takeSheet");
  const take = async (): Promise<void> => {
    const missing = [
      ...(typist.trim() === "" ? [{ field: "typist", limit: "the name of who types it" }] : []),
      ...(ofAge ? [] : [{ field: "ofLegalAge", limit: `${taster}’s word on legal drinking age` }]),
    ];
    if (missing.length > 0) {
      say.refuse(
        missing.map(({ field, limit }) => ({
          code: `${field}_missing`,
          path: [field],
          limit,
          received: null,
          message: `typing in a sheet requires ${limit}, got none`,
        })),
      );
      return;
    }
    const taken = await say.send({ at, body: { ofLegalAge: true } });
    if (taken === null) return;
    keep(TYPIST, typist.trim());
    keep(paperKey(at.sheet), "typed here");
    keepToken("sheet", at.sheet, taken.token);
  };
  return (
    <Page
      title={`${taster}’s paper sheet`}
      lead={`${flight.name}. You type what ${taster} wrote; it counts as ${taster}’s own.`}
      back={{ to: flightPath(at.household, at.flight), label: "The flight" }}
    >
      <Form say={say} onSend={() => void take()}>
        <TextField
          label="Who types it"
          path={["typist"]}
          value={typist}
          onChange={setTypist}
          hint="Stands in the sheet’s notes, where everybody reads it after the reveal."
          input={{ maxLength: 80 }}
        />
        <Tick
          label={`${taster} has said to be of legal drinking age.`}
          path={["ofLegalAge"]}
          value={ofAge}
          onChange={setOfAge}
        />
        <div>
          <Button kind="main" type="submit" busy={say.busy}>
            Type it in
          </Button>
        </div>
      </Form>
    </Page>
  );
}

function Written({ at, token }: { readonly at: At; readonly token: string }) {
  const asked = useAsk("getSheet", { at, token });
  if (asked.state === "here" && asked.answer.state === "open") {
    return <Typing sheet={asked.answer} at={at} token={token} />;
  }
  return (
    <Page title="A paper sheet" back={{ to: flightPath(at.household, at.flight), label: "The flight" }}>
      {asked.state === "busy" && <Busy what="the sheet" />}
      {asked.state === "broken" && <Broken asked={asked} title="The sheet could not be fetched" />}
      {asked.state === "here" && <p>{asked.answer.taster}’s sheet is locked.</p>}
    </Page>
  );
}

/** Enter goes to the next field, as the pen did. */
function onEnter(event: KeyboardEvent<HTMLElement>): void {
  if (
    event.key !== "Enter" ||
    event.target instanceof HTMLButtonElement ||
    event.target instanceof HTMLAnchorElement
  )
    return;
  event.preventDefault();
  const fields = [...event.currentTarget.querySelectorAll<HTMLElement>("input, select, a.button-main")];
  fields[fields.indexOf(event.target as HTMLElement) + 1]?.focus();
}

function Typing({ sheet, at, token }: { readonly sheet: Sheet; readonly at: At; readonly token: string }) {
  const [keeping, keeper] = useKeeper(sheet, at.household, token);
  const { fields } = keeping;
  const first = sheet.glasses[0]?.code ?? "";
  const sets = sheet.sets.length > 0 ? sheet.sets : [{ set: null, glasses: sheet.glasses }];
  const set = (key: string, value: FieldValue): void => {
    keeper.set(key, value);
    // Who typed it goes with the first thing that is typed.
    const note = noteKey(first, "second", "finish");
    const typist = kept(TYPIST) ?? "";
    const noted = String(keeper.see().fields.get(note) ?? "");
    if (typist !== "" && withTypist(noted, typist) !== noted) keeper.set(note, withTypist(noted, typist));
  };
  return (
    <Page
      title={`${sheet.taster}’s paper sheet`}
      lead={`${sheet.flightName}. Tab or Enter goes on in the order of the paper. ${sheet.task}`}
      back={{ to: flightPath(at.household, at.flight), label: "The flight" }}
      actions={<KeptMark keeping={keeping} onTry={() => void keeper.flush()} />}
      wide
    >
      {keeping.clash !== null && (
        <ClashPanel
          clash={keeping.clash}
          sheet={keeping.sheet}
          onChoose={(choice) => keeper.choose(choice)}
        />
      )}
      <Notices notices={keeping.notices} onRead={() => keeper.dismiss()} />
      {/* oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- Enter in a field goes on to the next */}
      <div className="typein" onKeyDown={onEnter}>
        {sets.map((one) => (
          <section key={one.set ?? "row"}>
            {one.set !== null && (
              <h2>
                {sheet.asks.answers === "ranking" ? "Round" : "Set"} {one.set}
              </h2>
            )}
            <Rows sheet={sheet} fields={fields} set={set} codes={one.glasses.map(({ code }) => code)} />
            {one.set !== null && (
              <Answer
                key={one.set}
                label={
                  sheet.asks.answers === "picked"
                    ? `Answer to set ${one.set}`
                    : `Order of round ${one.set}, best first`
                }
                start={
                  sheet.asks.answers === "picked"
                    ? pickedIn(fields, one.set).join(" ")
                    : orderText(roundIn(fields, one.set))
                }
                read={(text) => {
                  const codes = one.glasses.map(({ code }) => code);
                  if (sheet.asks.answers === "picked") {
                    const read = readPicks(text, codes);
                    if (read.ok)
                      set(
                        answerKey(one.set),
                        read.value.length === 0 ? null : read.value.toSorted().join(" "),
                      );
                    return read.ok ? null : read.why;
                  }
                  const read = readOrder(text, codes, false);
                  if (read.ok) set(answerKey(one.set), read.value?.map((tier) => [...tier]) ?? null);
                  return read.ok ? null : read.why;
                }}
              />
            )}
          </section>
        ))}
        {sheet.asks.ranking !== null && (
          <Answer
            label={`Order, ${sheet.asks.ranking}`}
            hint="Numbers with spaces between; level ones with = between: 724 468=542 437."
            start={orderText(rankingIn(fields))}
            read={(text) => {
              const read = readOrder(
                text,
                sheet.glasses.map(({ code }) => code),
                true,
              );
              if (read.ok) set(RANKING, read.value?.map((tier) => [...tier]) ?? null);
              return read.ok ? null : read.why;
            }}
          />
        )}
        <div className="form-actions">
          <LinkButton kind="main" to={`${sheetPath(at.household, at.flight, at.sheet)}?at=lock`}>
            Look it over and lock it
          </LinkButton>
        </div>
      </div>
    </Page>
  );
}

const orderText = (order: readonly (readonly string[])[] | null): string =>
  order?.map((tier) => tier.join("=")).join(" ") ?? "";

interface RowsProps {
  readonly sheet: Sheet;
  readonly fields: Fields;
  readonly set: (key: string, value: FieldValue) => void;
  readonly codes: readonly string[];
}

function Rows({ sheet, fields, set, codes }: RowsProps) {
  const id = useId();
  const columns = [
    {
      head: "Nose",
      key: (code: string) => noteKey(code, "first", "nose"),
      of: (code: string) => notesIn(fields, code).first.nose,
    },
    {
      head: "Palate",
      key: (code: string) => noteKey(code, "first", "palate"),
      of: (code: string) => notesIn(fields, code).first.palate,
    },
    {
      head: "Finish",
      key: (code: string) => noteKey(code, "first", "finish"),
      of: (code: string) => notesIn(fields, code).first.finish,
    },
    ...(sheet.sets.length > 0
      ? []
      : [
          {
            head: "Second time",
            key: (code: string) => noteKey(code, "second", "palate"),
            of: (code: string) => notesIn(fields, code).second.palate,
          },
        ]),
  ];
  return (
    <table className="typein-rows">
      <thead>
        <tr>
          <th scope="col" id={`${id}-glass`}>
            {sheet.pouring === "alone" ? "Place" : "Glass"}
          </th>
          {columns.map(({ head }) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
          {sheet.asks.guesses && <th scope="col">I think it is</th>}
        </tr>
      </thead>
      <tbody>
        {codes.map((code) => (
          <tr key={code}>
            <th scope="row">{code}</th>
            {columns.map(({ head, key, of }) => (
              <td key={head} data-head={head}>
                <input
                  className="input"
                  aria-label={`${head} of glass ${code}`}
                  autoComplete="off"
                  value={of(code)}
                  onChange={(event) => set(key(code), event.target.value)}
                />
              </td>
            ))}
            {sheet.asks.guesses && (
              <td data-head="I think it is">
                <select
                  className="input"
                  aria-label={`I think glass ${code} is`}
                  value={guessIn(fields, code) ?? ""}
                  onChange={(event) =>
                    set(guessKey(code), event.target.value === "" ? null : event.target.value)
                  }
                >
                  <option value="">no guess</option>
                  {sheet.namesOnOffer.map(({ nameId, label }) => (
                    <option key={nameId} value={nameId}>
                      {label}
                    </option>
                  ))}
                </select>
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface AnswerProps {
  readonly label: string;
  readonly hint?: string;
  readonly start: string;
  /** Takes what was typed if it can be read; else why not. */
  readonly read: (text: string) => string | null;
}

function Answer({ label, hint, start, read }: AnswerProps) {
  const [text, setText] = useState(start);
  const [why, setWhy] = useState<string | null>(null);
  return (
    <TextField
      label={label}
      {...(hint === undefined ? {} : { hint })}
      value={text}
      onChange={(typed) => {
        setText(typed);
        // While it is being typed it is not whole; what was wrong is said when the field is left.
        if (read(typed) === null) setWhy(null);
      }}
      wrong={why === null ? null : `${why}; it is not saved`}
      input={{ inputMode: "numeric", onBlur: () => setWhy(read(text)) }}
    />
  );
}
