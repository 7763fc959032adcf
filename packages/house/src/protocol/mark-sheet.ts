import { z } from "zod";

export const MOST_SHEETS = 100;

/** Glasses one person marks at once, and how often one of them may be poured. */
const MOST_MARKED = 32;
const MOST_POURS = 12;

const Name = z.string().min(1).max(120);

/** The numbers one taster gave in one flight; more is better. */
export const MarkSheet = z.strictObject({
  taster: Name.optional(),
  /** As in a ranking that has it: both are of one sheet, and one of the two is taken. */
  flight: Name.optional(),
  /** What the numbers are of; what is sought where left out: closeness where there is a target, else liking. */
  of: z.enum(["liking", "closeness"]).optional(),
  /** Least and most that could be given. */
  scale: z.tuple([z.number(), z.number()]).optional(),
  /** By id of what was tried; several where a glass was poured more than once. */
  marks: z.record(Name, z.union([z.number(), z.array(z.number()).min(1).max(MOST_POURS)])),
});
export type MarkSheet = z.infer<typeof MarkSheet>;

/** Marks one by one, with where each stands. */
export const marksIn = ({ marks }: Pick<MarkSheet, "marks">) =>
  Object.entries(marks).flatMap(([id, own]) =>
    typeof own === "number"
      ? [{ id, mark: own, path: [id] as (string | number)[] }]
      : own.map((mark, n) => ({ id, mark, path: [id, n] })),
  );

/** What is wrong with sheets of marks besides their form. */
export function markIssues(
  sheets: readonly MarkSheet[],
  poured: ReadonlySet<string>,
  target: string | undefined,
  wrong: (path: (string | number)[], code: string, message: string, input: unknown) => void,
): void {
  for (const [s, sheet] of sheets.entries()) {
    const at = ["scores", s];
    const [low, high] = sheet.scale ?? [-Infinity, Infinity];
    if (!(low < high)) wrong([...at, "scale"], "scale_upside_down", "a least below the most", sheet.scale);
    if (sheet.of === "closeness" && target === undefined)
      wrong([...at, "of"], "closeness_without_target", "a target that it is close to", sheet.of);
    for (const id of Object.keys(sheet.marks))
      if (!poured.has(id)) wrong([...at, "marks", id], "not_tried", "the id of what was tried", id);
    const marks = marksIn(sheet);
    for (const { mark, path } of marks)
      if (low < high && !(mark >= low && mark <= high))
        wrong([...at, "marks", ...path], "mark_outside_scale", `a number from ${low} to ${high}`, mark);
    if (marks.length > MOST_MARKED)
      wrong([...at, "marks"], "too_many_marked", `at most ${MOST_MARKED} marks`, marks.length);
  }
}
