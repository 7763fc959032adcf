import { COUNTS_LIMITS, type CountsEffect, CountsTest } from "@partsproof/house/protocol";
import { issueAt, one, type Read, readNumber, readWhole, refuse } from "../../flags/index.ts";
import { unread } from "../../flags/read-number.ts";

const WRITTEN: Readonly<Record<string, CountsTest>> = {
  ...Object.fromEntries(CountsTest.options.map((test) => [test.replaceAll("_", ""), test])),
  "2afc": "two_afc",
  "3afc": "three_afc",
  "2outof5": "two_out_of_five",
};

/** A difference test by name, with "-", "_" or a space between its words: duo-trio, 2-AFC. */
export const readTest: Read<CountsTest> = (text) => {
  const bare = text.toLowerCase().replaceAll(/[-_\s]/g, "");
  const test = Object.hasOwn(WRITTEN, bare) ? WRITTEN[bare] : undefined;
  if (test !== undefined) return { ok: true, value: test };
  return unread("test", "unknown_word", `one of ${CountsTest.options.join(", ")}`, text);
};

export const TESTS = `<${CountsTest.options.join("|")}>`;

/** Whole numbers with commas between them: "2,1,1,1". */
export const readWholes =
  (what: string, low: number, high: number): Read<readonly number[]> =>
  (text) => {
    const values: number[] = [];
    for (const part of text.split(",")) {
      const read = readWhole(what, low, high)(part);
      if (!read.ok) return read;
      values.push(read.value);
    }
    return { ok: true, value: values };
  };

/** Numbers with commas between them: "1,0.5,0". */
export const readNumbers =
  (what: string, low: number, high: number): Read<readonly number[]> =>
  (text) => {
    const values: number[] = [];
    for (const part of text.split(",")) {
      const read = readNumber(what, low, high)(part);
      if (!read.ok) return read;
      values.push(read.value);
    }
    return { ok: true, value: values };
  };

/** Right and wrong answers in their order: "RRWR", or 1 and 0, or + and -; spaces and commas between them as one likes. */
export const readResults: Read<readonly boolean[]> = (text) => {
  const marks = text.replaceAll(/[\s,]/g, "").toUpperCase();
  if (!/^(?:[RW]+|[10]+|[+-]+)$/.test(marks))
    return unread(
      "results",
      "results_unreadable",
      "R for right and W for wrong, such as RRWR, or 1 and 0",
      text,
    );
  if (marks.length > COUNTS_LIMITS.turns)
    return unread(
      "results",
      "value_too_large",
      `at most ${COUNTS_LIMITS.turns} answers`,
      `${marks.length} answers`,
    );
  return { ok: true, value: Array.from(marks, (mark) => mark === "R" || mark === "1" || mark === "+") };
};

export const levelFlag = one(
  readNumber("level", 0.5, 0.999),
  "<0.5 to 0.999>",
  "of the intervals, 0.95 where left out",
);
export const alphaFlag = one(
  readNumber("alpha", 0.001, 0.5),
  "<0.001 to 0.5>",
  "risk of finding what is not there, 0.05 where left out",
);
export const betaFlag = one(
  readNumber("beta", 0.001, 0.5),
  "<0.001 to 0.5>",
  "risk of missing what is there, 0.2 where left out",
);
export const shareFlag = (says: string) => one(readNumber("share", 0.01, 0.99), "<0.01 to 0.99>", says);
export const dPrimeFlag = (says: string) => one(readNumber("d prime", 0.01, 6), "<0.01 to 6>", says);

/** The effect that one of two flags names; undefined where neither was typed. */
export function effectOf(
  share: number | undefined,
  dPrime: number | undefined,
  flag = "d-prime",
  other = "share",
): CountsEffect | undefined {
  if (share !== undefined && dPrime !== undefined)
    refuse(issueAt([flag], "flags_exclude", `no --${other} beside it`, dPrime));
  if (share !== undefined) return { share };
  return dPrime === undefined ? undefined : { dPrime };
}

/** The effect, which must be there. */
export function needEffect(share: number | undefined, dPrime: number | undefined): CountsEffect {
  return effectOf(share, dPrime) ?? refuse(issueAt(["share"], "flag_missing", "--share or --d-prime", null));
}

/** Fields that were typed. */
export const given = <T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
