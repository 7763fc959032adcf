import type { ProfileLine } from "@partsproof/house/protocol";
import { Scrolled } from "../../plots/index.ts";
import { attributeName } from "@partsproof/core/sensory";

const PARTS = ["nose", "palate", "finish", "whole"] as const;
const HEADS = { nose: "Nose", palate: "Palate", finish: "Finish", whole: "All in all" } as const;

/** What was observed by parts of the tasting, as numbers: mean give or take one standard deviation. */
export function SectionsTable({ line }: { readonly line: ProfileLine }) {
  const parts = PARTS.filter((part) => line.sections[part] !== undefined);
  if (parts.length < 2) return null;
  const cell = (part: (typeof PARTS)[number], attribute: string): string => {
    const said = line.sections[part]?.find((one) => one.attribute === attribute);
    return said === undefined ? "–" : `${said.mean.toFixed(1)} ± ${said.sd.toFixed(1)}`;
  };
  return (
    <details className="plot-table">
      <summary>{line.label} by nose, palate and finish</summary>
      <Scrolled>
        <table>
          <thead>
            <tr>
              <th scope="col">0 to 10, ± one standard deviation; – is unknown</th>
              {parts.map((part) => (
                <th scope="col" key={part}>
                  {HEADS[part]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {line.attributes.map(({ attribute }) => (
              <tr key={attribute}>
                <th scope="row">{attributeName(attribute)}</th>
                {parts.map((part) => (
                  <td key={part}>{cell(part, attribute)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolled>
    </details>
  );
}
