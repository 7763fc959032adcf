import { type BodyOf, ShelfColumn, type ShelfListPreview } from "@partsproof/house/protocol";
import { SelectField } from "../../parts/index.ts";

type Draft = BodyOf<"previewShelfList">;

interface Props {
  readonly draft: Draft;
  readonly preview: ShelfListPreview;
  readonly onChange: (draft: Draft) => void;
}

const SAYS: Readonly<Record<ShelfColumn, string>> = {
  ignore: "not read",
  maker: "maker",
  name: "name",
  release: "release",
  kind: "kind",
  strength: "strength",
  age: "age",
  bottle: "size of the bottle",
  left: "how much is left",
  opened: "opened",
  price: "price",
  count: "how many",
  distilledAt: "distilled at",
  place: "place",
  availability: "sold or gone",
  casks: "casks",
  grains: "grain bill",
  note: "note",
};

/** What each column was taken for, and what bare numbers are: to be put right. */
export function HowRead({ draft, preview, onChange }: Props) {
  const { columns } = preview;
  const set = (n: number, as: ShelfColumn): void =>
    onChange({ ...draft, columns: columns.map((column, i) => (i === n ? as : column.as)) });
  const bare = (name: "strengths" | "volumes" | "dates", value: string): void => {
    const { [name]: _, ...rest } = draft;
    onChange(value === "" ? rest : { ...rest, [name]: value });
  };
  return (
    <details className="list-how" open={preview.good === 0}>
      <summary>What each column is</summary>
      <div className="list-columns">
        {columns.map(({ heading, as }, n) => (
          <SelectField
            // oxlint-disable-next-line react/no-array-index-key -- headings can be the same twice
            key={n}
            label={heading === "" ? `Column ${n + 1}` : heading}
            value={as}
            onChange={(value) => set(n, ShelfColumn.parse(value))}
            options={ShelfColumn.options.map((option) => (
              <option key={option} value={option}>
                {SAYS[option]}
              </option>
            ))}
          />
        ))}
        <SelectField
          label="Strengths without a unit"
          value={draft.strengths ?? ""}
          onChange={(value) => bare("strengths", value)}
          options={
            <>
              <option value="">by their size</option>
              <option value="abv20">% vol</option>
              <option value="proof60F">proof</option>
            </>
          }
        />
        <SelectField
          label="Sizes without a unit"
          value={draft.volumes ?? ""}
          onChange={(value) => bare("volumes", value)}
          options={
            <>
              <option value="">by their size</option>
              <option value="ml">mL</option>
              <option value="cl">cL</option>
              <option value="l">L</option>
              <option value="oz">US fl oz</option>
            </>
          }
        />
        <SelectField
          label="Days such as 3/4/2024"
          value={draft.dates ?? ""}
          onChange={(value) => bare("dates", value)}
          options={
            <>
              <option value="">as the others say</option>
              <option value="dmy">day first</option>
              <option value="mdy">month first</option>
            </>
          }
        />
      </div>
    </details>
  );
}
