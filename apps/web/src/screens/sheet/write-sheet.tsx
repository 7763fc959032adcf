import type { Sheet } from "@partsproof/house/protocol";
import { useEffect, useRef } from "react";
import { Page } from "../../parts/index.ts";
import { go, usePlace } from "../../router/index.ts";
import { guessIn, rankingIn } from "./sheet-fields.ts";
import { noted } from "./blanks.ts";
import { ClashPanel } from "./clash-panel.tsx";
import { KeptMark, Notices } from "./kept-mark.tsx";
import { LockStep } from "./lock-step.tsx";
import { NameBoard } from "./name-board.tsx";
import { RankBoard } from "./rank-board.tsx";
import { type StepName, StepNav } from "./step-nav.tsx";
import { TasteStep } from "./taste-step.tsx";
import { useAtGlass } from "./use-at-glass.ts";
import { useKeeper } from "./use-keeper.ts";

export interface WriteSheetProps {
  readonly sheet: Sheet;
  readonly household: string;
  readonly token: string;
  readonly onLocked: () => void;
}

const STEPS: readonly StepName[] = ["first", "second", "names", "rank", "lock"];

/** The sheet while it is open: two passes of notes, guesses, a ranking, and the lock. */
export function WriteSheet({ sheet, household, token, onLocked }: WriteSheetProps) {
  const [keeping, keeper] = useKeeper(sheet, household, token);
  const { path, query } = usePlace();
  const step = STEPS.find((one) => one === query.get("at")) ?? "first";
  const codes = sheet.glasses.map(({ code }) => code);
  const code = codes.find((one) => one === query.get("glass")) ?? codes[0] ?? "";
  useAtGlass(
    { household, flight: sheet.flightId, sheet: sheet.id },
    token,
    step === "first" || step === "second" ? codes.indexOf(code) + 1 : null,
  );
  const heading = useRef<HTMLHeadingElement>(null);
  const moved = useRef(false);
  useEffect(() => {
    if (!moved.current) return;
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [step, code]);
  const to = (next: StepName, glass: string = code): void => {
    moved.current = true;
    go(`${path}?at=${next}&glass=${glass}`, { replace: true });
  };
  const { fields } = keeping;
  const set = (key: string, value: Parameters<typeof keeper.set>[1]): void => keeper.set(key, value);
  const shared = { sheet, fields, set, heading };
  const glassesNoted = (pass: "first" | "second"): string =>
    `${codes.filter((one) => noted(fields, one, pass)).length} of ${codes.length}`;
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
            code={code}
            onGlass={(glass) => to(step, glass)}
            onDone={() => to(step === "first" ? "second" : "names", codes[0])}
          />
        )}
        {step === "names" && (
          <NameBoard
            {...shared}
            code={code}
            onGlass={(glass) => to("names", glass)}
            onDone={() => to("rank")}
          />
        )}
        {step === "rank" && <RankBoard {...shared} onDone={() => to("lock")} />}
        {step === "lock" && (
          <LockStep {...shared} keeper={keeper} household={household} token={token} onLocked={onLocked} />
        )}
      </Page>
      <StepNav
        at={step}
        onStep={(next) => to(next)}
        progress={{
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
