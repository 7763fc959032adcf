import { ATTRIBUTES } from "@partsproof/core/sensory";

/** Intensities of 0 to 10 by an attribute's id. An attribute that is left out was not said; 0 says that it is not there. */
export type Strengths = ReadonlyMap<string, number>;

/** Begins the line of a note that holds intensities: "Of 10: smoke 6, vanilla 3.5". People read it as it stands. */
const HEAD = "Of 10: ";
const IDS: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [name, id]));
const NAMES: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [id, name]));

/** A line of intensities, or null for a line of prose, one that merely looks like it included. */
function readLine(line: string): Strengths | null {
  if (!line.startsWith(HEAD)) return null;
  const found = new Map<string, number>();
  for (const part of line.slice(HEAD.length).split(", ")) {
    const [, name = "", number = ""] = /^(.+) (\d{1,2}(?:\.\d{1,2})?)$/.exec(part) ?? [];
    const id = IDS.get(name);
    if (id === undefined || Number(number) > 10) return null;
    found.set(id, Number(number));
  }
  return found;
}

/** The intensities in a note. Where two lines stand, as after two devices were joined, the later one has the word. */
export function strengthsIn(note: string): Strengths {
  return new Map(note.split("\n").flatMap((line) => [...(readLine(line) ?? [])]));
}

/** The note without its intensities: what was typed, spoken or tapped. */
export function proseIn(note: string): string {
  const lines = note.split("\n");
  return lines.some((line) => readLine(line) !== null)
    ? lines.filter((line) => readLine(line) === null).join("\n")
    : note;
}

/** One note of prose and intensities; none set leaves no line. */
export function joinNote(prose: string, strengths: Strengths): string {
  const parts = [...strengths].flatMap(([id, value]) => {
    const name = NAMES.get(id);
    return name === undefined ? [] : [`${name} ${Number(value.toFixed(2))}`];
  });
  if (parts.length === 0) return prose;
  const line = HEAD + parts.join(", ");
  return prose === "" ? line : `${prose}\n${line}`;
}

/** Sets one intensity; null takes it back. */
export function withStrength(note: string, id: string, value: number | null): string {
  const strengths = new Map(strengthsIn(note));
  if (value === null) strengths.delete(id);
  else strengths.set(id, value);
  return joinNote(proseIn(note), strengths);
}
