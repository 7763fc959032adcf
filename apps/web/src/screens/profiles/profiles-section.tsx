import type { ProfileBoard } from "@partsproof/house/protocol";
import type { Asked } from "../../api.ts";
import { Broken, Busy, Section } from "../../parts/index.ts";
import { AgainstFigure, LineFigure } from "./profile-figures.tsx";
import { SectionsTable } from "./sections-table.tsx";

interface ProfilesSectionProps {
  readonly asked: Asked<ProfileBoard>;
  readonly title: string;
  /** Of the files. */
  readonly name: string;
}

/** Profiles drawn together: each liquid that was observed against what was predicted, the others by themselves. */
export function ProfilesSection({ asked, title, name }: ProfilesSectionProps) {
  return (
    <Section title={title}>
      {asked.state === "busy" && <Busy what="the profiles" />}
      {asked.state === "broken" && <Broken asked={asked} title="The profiles could not be fetched" />}
      {asked.state === "here" && <Board board={asked.answer} name={name} />}
    </Section>
  );
}

function Board({ board, name }: { readonly board: ProfileBoard; readonly name: string }) {
  const { lines, against, scales, headline } = board;
  const compared = new Set(against.flatMap(({ predicted, observed }) => [predicted, observed]));
  const alone = lines.filter(({ key, attributes }) => !compared.has(key) && attributes.length > 0);
  return (
    <>
      {against.length === 0 && <p>{headline}</p>}
      {against.map((one, i) => (
        <AgainstFigure key={one.observed} board={board} against={one} name={`${name}-${i + 1}`} />
      ))}
      {alone.map((line, i) => (
        <LineFigure key={line.key} line={line} name={`${name}-${against.length + i + 1}`} />
      ))}
      {lines.flatMap((line) =>
        line.kind === "observed" ? [<SectionsTable key={line.key} line={line} />] : [],
      )}
      {scales.length > 1 && (
        <p className="soft small">
          Taken out of it, how each uses the scale: {scales.map(said).join("; ")}. Learned from what others
          spoke of too.
        </p>
      )}
    </>
  );
}

function said({ taster, offset, stretch }: ProfileBoard["scales"][number]): string {
  const by =
    Math.abs(offset) < 0.05
      ? "as the others"
      : `${Math.abs(offset).toFixed(1)} ${offset < 0 ? "lower" : "higher"}`;
  return `${taster} ${by}, spread × ${stretch.toFixed(2)}`;
}
