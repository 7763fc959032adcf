import type { Sheet } from "@partsproof/house/protocol";
import { orderText, readOrder, readPicks } from "./read-paper.ts";
import { answerKey, type Fields, type FieldValue, pickedIn, roundIn } from "./sheet-fields.ts";
import { TypedAnswer } from "./typed-answer.tsx";
import { TypedRows } from "./typed-rows.tsx";

interface TypedSetProps {
  readonly sheet: Sheet;
  readonly one: Sheet["sets"][number];
  readonly fields: Fields;
  readonly set: (key: string, value: FieldValue) => void;
}

/** One set or round of a paper sheet: its glasses, and the answer to it. */
export function TypedSet({ sheet, one, fields, set }: TypedSetProps) {
  const codes = one.glasses.map(({ code }) => code);
  const picks = sheet.asks.answers === "picked";
  const read = (text: string): string | null => {
    const typed = picks ? readPicks(text, codes) : readOrder(text, codes, false);
    if (!typed.ok) return typed.why;
    set(answerKey(one.set), answerOf(typed.value));
    return null;
  };
  return (
    <section>
      <h2>
        {picks ? "Set" : "Round"} {one.set}
      </h2>
      <TypedRows sheet={sheet} fields={fields} set={set} codes={codes} />
      <TypedAnswer
        label={picks ? `Answer to set ${one.set}` : `Order of round ${one.set}, best first`}
        start={picks ? pickedIn(fields, one.set).join(" ") : orderText(roundIn(fields, one.set))}
        read={read}
      />
    </section>
  );
}

/** As a field: picked codes with a space between, an order as it is, null for no answer. */
function answerOf(typed: readonly string[] | readonly (readonly string[])[] | null): FieldValue {
  if (typed === null || typed.length === 0) return null;
  return isOrder(typed) ? typed.map((tier) => [...tier]) : typed.toSorted().join(" ");
}

const isOrder = (
  typed: readonly string[] | readonly (readonly string[])[],
): typed is readonly (readonly string[])[] => typeof typed[0] !== "string";
