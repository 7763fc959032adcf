import { EntryDraft } from "@partsproof/house/protocol";
import { describe, expect, test } from "vitest";
import { blanksOf } from "./blanks.ts";
import { editOf, fieldsOf, guessKey, noteKey, RANKING, scoreKey } from "./sheet-fields.ts";

const glasses = [
  { position: 1, code: "417" },
  { position: 2, code: "902" },
];
const blank = { glasses, notes: [], guesses: [], ranking: null };
const nameId = `whiskey:${"0".repeat(26)}`;

describe("a sheet as fields", () => {
  test("has every field of every glass, blank where nothing is written", () => {
    const fields = fieldsOf(blank);
    expect(fields.size).toBe(2 * (6 + 2) + 1);
    expect(fields.get(noteKey("417", "second", "finish"))).toBe("");
    expect(fields.get(scoreKey("902"))).toBeNull();
  });

  test("sends only what changed, a glass's notes whole, and the house can read it", () => {
    const fields = new Map(fieldsOf(blank))
      .set(noteKey("417", "first", "nose"), "pear")
      .set(guessKey("902"), nameId);
    const edit = editOf(fields, [noteKey("417", "first", "nose"), guessKey("902")], ["417", "902"]);
    const empty = { nose: "", palate: "", finish: "" };
    expect(edit).toEqual({
      notes: [{ code: "417", first: { ...empty, nose: "pear" }, second: empty, score: null }],
      guesses: [{ code: "902", nameId }],
    });
    const entry = { key: "0123456789abcdefghij-_", after: 3, ...edit };
    expect(EntryDraft.parse(entry)).toEqual(entry);
  });

  test("a ranking taken back is sent as none", () => {
    expect(editOf(fieldsOf(blank), [RANKING], ["417", "902"])).toEqual({ ranking: null });
  });
});

describe("what a lock leaves blank", () => {
  test("everything on a blank sheet", () => {
    expect(blanksOf(fieldsOf(blank), glasses)).toEqual([
      "No notes on any glass.",
      "No guess for any glass.",
      "No ranking.",
    ]);
  });

  test("names the glasses; spaces are no notes, a second pass is", () => {
    const fields = new Map(fieldsOf(blank))
      .set(noteKey("417", "first", "nose"), "  ")
      .set(noteKey("902", "second", "finish"), "smoke")
      .set(guessKey("417"), nameId)
      .set(RANKING, [["902"], ["417"]]);
    expect(blanksOf(fields, glasses)).toEqual(["No notes on glass 417.", "No guess for glass 902."]);
  });
});
