import type { ReactNode } from "react";
import { DrawFigure } from "./draw-figure.tsx";
import { type Drawing, type Table, WIDTHS } from "./drawing.ts";
import { type Saved, saveCsv, savePng, saveSvg } from "./save-figure.ts";
import { useFigureWidth } from "./use-figure-width.ts";
import { Scrolled } from "../scrolled.tsx";
import "../plots.css";
import "./drawn.css";

export interface FigureProps {
  /** The finding in a sentence; a number and method in brackets at its end are shown small. */
  readonly title: string;
  /** Of the files: no path, no spaces. */
  readonly name: string;
  /** What the marks stand for and where they come from; stands in the files too. */
  readonly note: string;
  readonly draw: (width: number) => Drawing;
  readonly table: Table;
  readonly children?: ReactNode;
}

/** A figure that answers a question: drawn, as a table, and as files. */
export function Figure({ title, name, note, draw, table, children }: FigureProps) {
  const width = useFigureWidth();
  const [, claim = title, how = ""] = /^(.*?) (\([^()]*\))\.?$/.exec(title) ?? [];
  const saved = (): Saved => ({ name, title, note, drawing: draw(WIDTHS.wide), table });
  return (
    <figure className="plot">
      <figcaption className="plot-title">
        {claim}
        {how !== "" && <span className="drawn-how"> {how}</span>}
      </figcaption>
      <DrawFigure drawing={draw(width)} />
      <p className="soft small">{note}</p>
      {children}
      <details className="plot-table no-paper">
        <summary>As a table, and as files</summary>
        <Scrolled>
          <table>
            <thead>
              <tr>
                {table.heads.map((head) => (
                  <th scope="col" key={head}>
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {table.rows.map(([first, ...rest], i) => (
                // oxlint-disable-next-line react/no-array-index-key -- two glasses may have one name; rows do not move
                <tr key={i}>
                  <th scope="row">{first}</th>
                  {rest.map((cell, j) => (
                    <td key={table.heads[j + 1]}>{cell}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolled>
        <p className="drawn-files">
          <button type="button" className="button button-plain" onClick={() => saveSvg(saved())}>
            Save as SVG
          </button>
          <button type="button" className="button button-plain" onClick={() => void savePng(saved())}>
            Save as PNG
          </button>
          <button type="button" className="button button-plain" onClick={() => saveCsv(saved())}>
            Save as CSV
          </button>
        </p>
      </details>
    </figure>
  );
}
