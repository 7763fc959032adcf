import type { Sheet } from "@partsproof/house/protocol";
import { useId } from "react";
import { type Fields, type FieldValue, guessIn, guessKey, noteKey, notesIn } from "./sheet-fields.ts";

interface TypedRowsProps {
  readonly sheet: Sheet;
  readonly fields: Fields;
  readonly set: (key: string, value: FieldValue) => void;
  readonly codes: readonly string[];
}

/** The glasses of a paper sheet, a row each, as they stand on the paper. */
export function TypedRows({ sheet, fields, set, codes }: TypedRowsProps) {
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
