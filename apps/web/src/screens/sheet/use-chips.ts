import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import {
  bring,
  type Chip,
  correct,
  type GlassNotes,
  type GlassRead,
  keepNoting,
  keptNoting,
  type Noting,
  type Put,
} from "../../noting/index.ts";
import type { LearnedWord } from "@partsproof/house/protocol";
import type { SheetWords } from "./use-sheet-words.ts";
import { type Fields, type Pass, type Section, type Sense, strengthKey } from "./sheet-fields.ts";

type Read = typeof import("../../noting/read-glass.ts");

/** After the last keystroke: a keystroke itself reads nothing. */
const REST_MS = 80;

export interface Chips {
  /** As they stand on the sheet, by the note they stand in: one taken off it is no chip. */
  readonly chips: Readonly<Record<Sense, readonly Chip[]>>;
  /** "section/attribute" of all that a chip speaks for. */
  readonly spokenFor: ReadonlySet<string>;
  /** Words that the notes say the meaning of. */
  readonly offers: readonly LearnedWord[];
  /** Puts a chip right; null takes it away. */
  readonly put: (chip: Chip, to: Put | null) => void;
  /** Teaches that the words of a chip always mean this; false where that cannot be learned from them. */
  readonly teach: (chip: Chip, to: LearnedWord["attribute"]) => boolean;
}

interface Of {
  readonly sheet: string;
  readonly code: string;
  readonly pass: Pass;
  readonly fields: Fields;
  readonly notes: GlassNotes;
  readonly set: (key: string, value: number | null) => void;
  readonly own: SheetWords;
}

/** The chips of one glass in one pass. What they come to is written on the sheet's strengths, save where a hand said otherwise. */
export function useChips({ sheet, code, pass, fields, notes, set, own }: Of): Chips {
  const glass = `${code}/${pass}`;
  const { words, teach: learn } = own;
  const [read, setRead] = useState<Read | null>(null);
  const [found, setFound] = useState<GlassRead | null>(null);
  const noting = useRef<Noting | null>(null);
  const newest = useRef({ fields, notes, set });
  const pending = useRef<(() => void) | null>(null);
  useEffect(() => {
    newest.current = { fields, notes, set };
  });
  useEffect(() => {
    let gone = false;
    // Without it, notes are notes: nothing else waits for it.
    void import("../../noting/read-glass.ts").then(
      (room) => {
        if (!gone) setRead(room);
      },
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, []);
  const keyOf = useCallback(
    (key: string): string => {
      const [section = "", attribute = ""] = key.split("/");
      return strengthKey(code, pass, section as Section, attribute);
    },
    [code, pass],
  );
  const stands = useCallback(
    (key: string): number | null => {
      const value = newest.current.fields.get(keyOf(key));
      return typeof value === "number" ? value : null;
    },
    [keyOf],
  );
  const bringUp = useCallback((): void => {
    pending.current = null;
    if (read === null) return;
    const now = newest.current;
    // Notes that came from elsewhere have their strengths from there.
    noting.current ??= keptNoting(sheet, glass) ?? {
      gave: read.readGlass(now.notes, [], words).strengths,
      marks: [],
    };
    const { gave } = noting.current;
    // What was put right ends with its words.
    const marks = noting.current.marks.filter(({ sense, words }) =>
      now.notes[sense].toLowerCase().includes(words),
    );
    const from = performance.now();
    const next = read.readGlass(now.notes, marks, words);
    // For whoever measures it: the User Timing of the browser.
    performance.measure("notes read", { start: from });
    for (const [key, value] of bring(stands, gave, next.strengths)) now.set(keyOf(key), value);
    noting.current = { gave: next.strengths, marks };
    keepNoting(sheet, glass, noting.current);
    setFound(next);
  }, [read, words, sheet, glass, stands, keyOf]);
  const put = useCallback(
    (chip: Chip, to: Put | null): void => {
      bringUp();
      if (read === null || noting.current === null) return;
      const marks = correct(noting.current.marks, chip, to);
      const next = read.readGlass(newest.current.notes, marks, words);
      const moved = [`${chip.section}/${chip.attribute}`, ...(to ? [`${to.section}/${to.attribute}`] : [])];
      for (const key of new Set(moved)) newest.current.set(keyOf(key), next.strengths.get(key) ?? null);
      noting.current = { gave: next.strengths, marks };
      keepNoting(sheet, glass, noting.current);
      setFound(next);
    },
    [bringUp, read, words, sheet, glass, keyOf],
  );
  const teach = useCallback(
    (chip: Chip, to: LearnedWord["attribute"]): boolean => {
      bringUp();
      if (read === null || noting.current === null) return false;
      const now = newest.current;
      const lesson = read.lessonOf(chip, now.notes, to, words);
      if (lesson === null) return false;
      const { gave, marks: before } = noting.current;
      const learned = [...words, lesson];
      // How strong it was put, and where, is kept with the words as they are read from now on.
      const again = read
        .readGlass(now.notes, before, learned)
        .chips.find((one) => one.attribute === to && one.sense === chip.sense && overlap(one, chip));
      const marks =
        again === undefined ? before : correct(before, again, { ...putOf(chip), attribute: again.attribute });
      const next = read.readGlass(now.notes, marks, learned);
      for (const [key, value] of bring(stands, gave, next.strengths)) now.set(keyOf(key), value);
      noting.current = { gave: next.strengths, marks };
      keepNoting(sheet, glass, noting.current);
      setFound(next);
      learn(lesson);
      return true;
    },
    [bringUp, read, words, learn, sheet, glass, stands, keyOf],
  );
  const { nose, palate, finish } = notes;
  useEffect(() => {
    if (nose === "" && palate === "" && finish === "") noting.current ??= keptNoting(sheet, glass) ?? EMPTY;
    pending.current = bringUp;
    const timer = setTimeout(bringUp, REST_MS);
    return () => clearTimeout(timer);
  }, [nose, palate, finish, bringUp, sheet, glass]);
  // Who turns to the next glass at once has what was typed last read all the same.
  useEffect(() => () => pending.current?.(), []);
  // Compared by what they say: every keystroke makes the fields anew, and no chip of it.
  const standing = JSON.stringify(
    [...(found?.strengths.keys() ?? [])].map((key) => [key, fields.get(keyOf(key)) ?? null]),
  );
  const now = useMemo(() => shown(found, new Map(JSON.parse(standing) as Standing)), [found, standing]);
  return { ...now, put, teach };
}

const overlap = (a: Chip, b: Chip): boolean => a.quote[0] < b.quote[1] && a.quote[1] > b.quote[0];
const putOf = ({ section, strength }: Chip) => ({ section, strength });

const EMPTY: Noting = { gave: new Map(), marks: [] };

type Standing = readonly (readonly [key: string, strength: number | null])[];

function shown(
  found: GlassRead | null,
  standing: ReadonlyMap<string, number | null>,
): Omit<Chips, "put" | "teach"> {
  const chips = (found?.chips ?? []).flatMap((chip) => {
    const key = `${chip.section}/${chip.attribute}`;
    if (found?.strengths.has(key) !== true) return [chip];
    const strength = standing.get(key) ?? null;
    return strength !== null ? [{ ...chip, strength }] : [];
  });
  const of = (sense: Sense): readonly Chip[] => chips.filter((chip) => chip.sense === sense);
  return {
    chips: { nose: of("nose"), palate: of("palate"), finish: of("finish") },
    offers: found?.offers ?? [],
    spokenFor: new Set(chips.map((chip) => `${chip.section}/${chip.attribute}`)),
  };
}
