import { EntryDraft } from "@partsproof/house/protocol";
import { describe, expect, test } from "vitest";
import { blanksOf, noted } from "./blanks.ts";
import { clashOf } from "./clash.ts";
import { joinFields } from "./join-fields.ts";
import {
  allStrengthsIn,
  answerKey,
  editOf,
  fieldsOf,
  guessKey,
  noteKey,
  pickedIn,
  RANKING,
  roundIn,
  sameValue,
  scoreKey,
  sureKey,
  strengthKey,
  strengthsIn,
} from "./sheet-fields.ts";

const glasses = [
  { position: 1, code: "417" },
  { position: 2, code: "902" },
];
const blank = { glasses, notes: [], strengths: [], guesses: [], ranking: null, sets: [] };
const nameId = `whiskey:${"0".repeat(26)}`;

describe("a sheet as fields", () => {
  test("has every field of every glass, blank where nothing is written", () => {
    const fields = fieldsOf(blank);
    expect(fields.size).toBe(2 * (6 + 3) + 1);
    expect(fields.get(noteKey("417", "second", "finish"))).toBe("");
    expect(fields.get(scoreKey("902"))).toBeNull();
  });

  test("how sure goes with its guess, and with none it goes nowhere", () => {
    const named = new Map(fieldsOf(blank)).set(guessKey("902"), nameId).set(sureKey("902"), 70);
    const edit = editOf(named, [sureKey("902")], ["417", "902"]);
    expect(edit).toEqual({ guesses: [{ code: "902", nameId, sure: 70 }] });
    const entry = { key: "0123456789abcdefghij-_", after: 3, ...edit };
    expect(EntryDraft.parse(entry)).toEqual(entry);
    const back = new Map(named).set(guessKey("902"), null);
    expect(editOf(back, [guessKey("902"), sureKey("902")], ["902"])).toEqual({
      guesses: [{ code: "902", nameId: null }],
    });
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

  test("how strong a glass is goes by glass, pass, section and attribute; nothing said is no field and not 0", () => {
    const smoke = { code: "417", pass: "first", section: "nose", attribute: "smoke.smoke" } as const;
    const honey = { code: "902", pass: "second", section: "whole", attribute: "sweet.honey" } as const;
    const sheet = { ...blank, strengths: [{ ...smoke, strength: 0 }] };
    const fields = new Map(fieldsOf(sheet));
    expect(fields.size).toBe(fieldsOf(blank).size + 1);
    const keyOf = ({ code, pass, section, attribute }: typeof smoke | typeof honey) =>
      strengthKey(code, pass, section, attribute);
    expect([...strengthsIn(fields, "417", "first", "nose")]).toEqual([["smoke.smoke", 0]]);
    expect([noted(fields, "417", "first"), noted(fields, "417", "second")]).toEqual([true, false]);
    fields.set(keyOf(smoke), null).set(keyOf(honey), 3.5);
    const edit = editOf(fields, [keyOf(smoke), keyOf(honey)], ["417", "902"]);
    expect(edit).toEqual({
      strengths: [
        { ...smoke, strength: null },
        { ...honey, strength: 3.5 },
      ],
    });
    const entry = { key: "0123456789abcdefghij-_", after: 3, ...edit };
    expect(EntryDraft.parse(entry)).toEqual(entry);
    expect(allStrengthsIn(fields, "417")).toEqual([]);
    expect(sameValue(fieldsOf(blank).get(keyOf(honey)), null)).toBe(true);

    // Two devices: what one took back and the other changed is a clash, in both directions, though one of them has no field.
    const before = fieldsOf(sheet);
    const mine = new Map([[keyOf(smoke), 5]]);
    expect(joinFields(before, mine, fieldsOf(blank))).toEqual({ mine, clashes: [keyOf(smoke)] });
    const there = { ...blank, strengths: [] } as unknown as Parameters<typeof clashOf>[2];
    expect(clashOf(before, mine, there, "same field")?.lines).toEqual([
      { key: keyOf(smoke), here: 5, there: null },
    ]);
    expect(clashOf(fieldsOf(blank), new Map([[keyOf(honey), 2]]), there, "same field")).toBeNull();
  });

  test("answers to sets go set by set, picks or an order, and one taken back goes as none", () => {
    const inSets = {
      ...blank,
      sets: [
        { set: 1, reference: false, glasses, picked: ["902"], ranking: null },
        { set: 2, reference: false, glasses, picked: null, ranking: [["902"], ["417"]] },
        { set: 3, reference: false, glasses, picked: ["417", "902"], ranking: null },
      ],
    };
    const fields = fieldsOf(inSets);
    expect([pickedIn(fields, 1), pickedIn(fields, 2), roundIn(fields, 2)]).toEqual([
      ["902"],
      [],
      [["902"], ["417"]],
    ]);
    const edit = editOf(new Map(fields).set(answerKey(1), null), [1, 2, 3].map(answerKey), ["417", "902"]);
    expect(edit).toEqual({
      answers: [
        { set: 1, picked: null, ranking: null },
        { set: 2, picked: null, ranking: [["902"], ["417"]] },
        { set: 3, picked: ["417", "902"], ranking: null },
      ],
    });
    const entry = { key: "0123456789abcdefghij-_", after: 0, ...edit };
    expect(EntryDraft.parse(entry)).toEqual(entry);
  });

  test("a ranking taken back is sent as none", () => {
    expect(editOf(fieldsOf(blank), [RANKING], ["417", "902"])).toEqual({ ranking: null });
  });
});

const asks = { guesses: true, ranking: "best first", answers: null } as const;
const asked = { glasses, asks, sets: [] };

describe("what a lock leaves blank", () => {
  test("everything on a blank sheet", () => {
    expect(blanksOf(fieldsOf(blank), asked)).toEqual([
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
    expect(blanksOf(fields, asked)).toEqual(["No notes on glass 417.", "No guess for glass 902."]);
  });

  test("asks for nothing that is not asked, and counts sets without an answer", () => {
    const sets = [1, 2, 3].map((set) => ({ set, reference: false, glasses, picked: null, ranking: null }));
    const inSets = { glasses, sets, asks: { guesses: false, ranking: null, answers: "picked" } } as const;
    const fields = new Map(fieldsOf({ ...blank, sets })).set(answerKey(2), "417");
    expect(blanksOf(fields, inSets)).toEqual(["No answer to sets 1 and 3."]);
    const rounds = { ...inSets, asks: { ...inSets.asks, answers: "ranking" } } as const;
    expect(blanksOf(fieldsOf({ ...blank, sets }), rounds)[0]).toBe("No order for any round.");
  });
});
