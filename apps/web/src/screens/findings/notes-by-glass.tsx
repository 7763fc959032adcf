import type { Finding } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { NotesRead } from "../sheet/notes-read.tsx";
import { glassTitle } from "./ranked-glasses.ts";
import { TargetMark } from "../flights/target-mark.tsx";

type TastedGlass = Finding["sheets"][number]["glasses"][number];
const isBlank = ({ notes, strengths }: TastedGlass): boolean => notes === null && strengths.length === 0;

/** What everybody wrote about each liquid, side by side. */
export function NotesByGlass({ finding }: { readonly finding: Finding }) {
  const ordered = finding.glasses.toSorted(
    (a, b) => (a.meanRank ?? 0) - (b.meanRank ?? 0) || a.glass - b.glass,
  );
  if (finding.sheets.every(({ glasses }) => glasses.every(isBlank))) {
    return (
      <Section title="The notes, glass by glass">
        <p className="soft">Nobody noted anything.</p>
      </Section>
    );
  }
  return (
    <Section title="The notes, glass by glass">
      {ordered.map((one, i) => (
        <details key={one.glass} className="byglass" open={i === 0}>
          <summary>
            <span className="name">{glassTitle(one)}</span>
            {one.target && <TargetMark />}
            {one.meanScore !== null && (
              <span className="byglass-score">mean score {Number(one.meanScore.toFixed(1))} of 100</span>
            )}
          </summary>
          <div className="byglass-notes">
            {finding.sheets.map((sheet) => {
              // In sets and rounds a taster has several glasses of it; those without a note are not listed.
              const tasted = sheet.glasses.filter((glass) => glass.glass === one.glass);
              const noted = tasted.filter((glass) => !isBlank(glass));
              return (noted.length > 0 ? noted : tasted.slice(0, 1)).map(({ code, notes, strengths }) => (
                <div key={`${sheet.sheetId} ${code}`}>
                  <h3>
                    {sheet.taster} <span className="soft">{code}</span>
                  </h3>
                  {sheet.typedBy !== null && (
                    <p className="soft small">Typed in from paper by {sheet.typedBy}.</p>
                  )}
                  <NotesRead notes={notes} strengths={strengths} />
                </div>
              ));
            })}
          </div>
        </details>
      ))}
    </Section>
  );
}
