import type { ListedRow } from "@partsproof/house/protocol";
import { sentence } from "../../parts/index.ts";

/** Every row as it would be taken in: what was guessed beside it, what is wrong in its place. */
export function ListedRows({ rows }: { readonly rows: readonly ListedRow[] }) {
  return (
    <ol className="list-rows">
      {rows.map((row) => (
        <li key={row.line} className={row.whiskey === null ? "list-row list-row-wrong" : "list-row"}>
          <span className="soft small">Line {row.line}</span>
          {row.whiskey === null ? (
            <div>
              {row.issues.map(({ code, message }) => (
                <p className="field-issue" key={`${code} ${message}`}>
                  {sentence(message)}
                </p>
              ))}
            </div>
          ) : (
            <div>
              <p>
                <span className="name">
                  {[row.whiskey.maker, row.whiskey.name, row.whiskey.release]
                    .filter((text) => text !== "")
                    .join(" ")}
                </span>
                , {row.whiskey.strength.value} {row.whiskey.strength.basis === "abv20" ? "% vol" : "proof"}
              </p>
              <p className="soft small">
                {bottlesOf(row)}
                {row.same !== null &&
                  (row.same.line === null ? ", of a whiskey that is here" : `, as on line ${row.same.line}`)}
              </p>
              {row.guessed.map(({ column, wrote, taken }) => (
                <p className="small" key={column}>
                  {column}: “{wrote}” taken as {taken}
                </p>
              ))}
            </div>
          )}
        </li>
      ))}
    </ol>
  );
}

function bottlesOf({ bottles, capacityMl, levelMl, openedOn }: ListedRow): string {
  if (bottles === 0) return "no bottle";
  const many = bottles === 1 ? "1 bottle" : `${bottles} bottles`;
  const open =
    openedOn === null ? "" : `, ${levelMl} mL left${openedOn === "not known" ? "" : `, opened ${openedOn}`}`;
  return `${many} of ${capacityMl} mL${open}`;
}
