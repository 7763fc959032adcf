import type { Sheet } from "@partsproof/house/protocol";
import { LinkButton, Page } from "../../parts/index.ts";
import { flightPath, sheetPath } from "../flights/paths.ts";
import { ClashPanel } from "./clash-panel.tsx";
import { enterGoesOn } from "./enter-goes-on.ts";
import { KeptMark, Notices } from "./kept-mark.tsx";
import type { PaperAt } from "./paper-at.ts";
import { orderText, readOrder } from "./read-paper.ts";
import { type FieldValue, RANKING, rankingIn } from "./sheet-fields.ts";
import { TypedAnswer } from "./typed-answer.tsx";
import { TypedRows } from "./typed-rows.tsx";
import { TypedSet } from "./typed-set.tsx";
import { useKeeper } from "./use-keeper.ts";
import "./sheet.css";
import "./type-in.css";

interface TypedSheetProps {
  readonly sheet: Sheet;
  readonly at: PaperAt;
  readonly token: string;
}

/** A paper sheet on one screen: its glasses, set by set where there are sets, and the order. */
export function TypedSheet({ sheet, at, token }: TypedSheetProps) {
  const [keeping, keeper] = useKeeper(sheet, at.household, token);
  const { fields } = keeping;
  const codes = sheet.glasses.map(({ code }) => code);
  const set = (key: string, value: FieldValue): void => keeper.set(key, value);
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
      <div className="typein" onKeyDown={enterGoesOn}>
        {sheet.sets.length === 0 ? (
          <TypedRows sheet={sheet} fields={fields} set={set} codes={codes} />
        ) : (
          sheet.sets.map((one) => (
            <TypedSet key={one.set} sheet={sheet} one={one} fields={fields} set={set} />
          ))
        )}
        {sheet.asks.ranking !== null && (
          <TypedAnswer
            label={`Order, ${sheet.asks.ranking}`}
            hint="Numbers with spaces between; level ones with = between: 724 468=542 437."
            start={orderText(rankingIn(fields))}
            read={(text) => {
              const read = readOrder(text, codes, true);
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
