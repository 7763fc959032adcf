import type { Sheet } from "@partsproof/house/protocol";
import { useEffect, useRef } from "react";
import { forgetSheet } from "../../noting/index.ts";
import { Page } from "../../parts/index.ts";
import { go, usePlace } from "../../router/index.ts";
import { SetBoard } from "./set-board.tsx";
import { answerKey, guessIn, rankingIn } from "./sheet-fields.ts";
import { noted } from "./blanks.ts";
import { ClashPanel } from "./clash-panel.tsx";
import { KeptMark, Notices } from "./kept-mark.tsx";
import { LockStep } from "./lock-step.tsx";
import { NameBoard } from "./name-board.tsx";
import { RankBoard } from "./rank-board.tsx";
import { type StepName, StepNav, stepsOf } from "./step-nav.tsx";
import { TasteStep } from "./taste-step.tsx";
import { useAtGlass } from "./use-at-glass.ts";
import { useKeeper } from "./use-keeper.ts";
import { useSheetWords } from "./use-sheet-words.ts";

export interface WriteSheetProps {
  readonly sheet: Sheet;
  readonly household: string;
  readonly token: string;
  readonly onLocked: () => void;
}

/** The sheet while it is open: what its question asks, notes, and the lock. */
export function WriteSheet({ sheet, household, token, onLocked }: WriteSheetProps) {
  const [keeping, keeper] = useKeeper(sheet, household, token);
  const own = useSheetWords(sheet, household, token);
  const { path, query } = usePlace();
  const steps = stepsOf(sheet.asks);
  const step = steps.find((one) => one.step === query.get("at"))?.step ?? steps[0]?.step ?? "first";
  const setAt = Number(query.get("set") ?? 1);
  const codes = sheet.glasses.map(({ code }) => code);
  const code = codes.find((one) => one === query.get("glass")) ?? codes[0] ?? "";
  useAtGlass(
    { household, flight: sheet.flightId, sheet: sheet.id },
    token,
    step === "first" || step === "second"
      ? codes.indexOf(code) + 1
      : step === "sets"
        ? (sheet.sets.find(({ set }) => set === setAt)?.glasses[0]?.position ?? null)
        : null,
  );
  const heading = useRef<HTMLHeadingElement>(null);
  const moved = useRef(false);
  useEffect(() => {
    if (!moved.current) return;
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [step, code, setAt]);
  const to = (next: StepName, glass: string = code, set: number = setAt): void => {
    moved.current = true;
    go(`${path}?at=${next}&glass=${glass}${sheet.sets.length === 0 ? "" : `&set=${set}`}`, { replace: true });
  };
  const after = (done: StepName): StepName =>
    steps[steps.findIndex((one) => one.step === done) + 1]?.step ?? "lock";
  const { fields } = keeping;
  const set = (key: string, value: Parameters<typeof keeper.set>[1]): void => keeper.set(key, value);
  const shared = { sheet, fields, set, heading };
  const glassesNoted = (pass: "first" | "second"): string =>
    `${codes.filter((one) => noted(fields, one, pass)).length} of ${codes.length}`;
  const locked = (): void => {
    forgetSheet(sheet.id);
    onLocked();
  };
  return (
    <div className="sheet">
      <Page
        title={`${sheet.taster}’s sheet`}
        heading={
          <>
            {sheet.taster}’s sheet<span className="sheet-flight"> {sheet.flightName}</span>
          </>
        }
        actions={<KeptMark keeping={keeping} onTry={() => void keeper.flush()} />}
      >
        {keeping.clash !== null && (
          <ClashPanel
            clash={keeping.clash}
            sheet={keeping.sheet}
            onChoose={(choice) => keeper.choose(choice)}
          />
        )}
        <Notices notices={keeping.notices} onRead={() => keeper.dismiss()} />
        {(step === "first" || step === "second") && (
          <TasteStep
            key={`${step} ${code}`}
            {...shared}
            pass={step}
            own={own}
            code={code}
            onGlass={(glass) => to(step, glass)}
            next={after(step)}
            onDone={() => to(after(step), codes[0])}
          />
        )}
        {step === "sets" && (
          <SetBoard {...shared} at={setAt} onSet={(one) => to("sets", code, one)} onDone={() => to("lock")} />
        )}
        {step === "names" && (
          <NameBoard
            {...shared}
            code={code}
            onGlass={(glass) => to("names", glass)}
            onDone={() => to(after("names"))}
          />
        )}
        {step === "rank" && <RankBoard {...shared} onDone={() => to("lock")} />}
        {step === "lock" && (
          <LockStep {...shared} keeper={keeper} household={household} token={token} onLocked={locked} />
        )}
      </Page>
      <StepNav
        steps={steps}
        at={step}
        onStep={(next) => to(next)}
        progress={{
          sets: `${sheet.sets.filter(({ set: one }) => (fields.get(answerKey(one)) ?? null) !== null).length} of ${sheet.sets.length}`,
          first: glassesNoted("first"),
          second: glassesNoted("second"),
          names: `${codes.filter((one) => guessIn(fields, one) !== null).length} of ${codes.length}`,
          rank: rankingIn(fields) === null ? "none" : "done",
          lock: "",
        }}
      />
    </div>
  );
}
