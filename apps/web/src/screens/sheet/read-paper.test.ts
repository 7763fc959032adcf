import fc from "fast-check";
import { expect, test } from "vitest";
import { readOrder, readPicks } from "./read-paper.ts";

const codes = ["724", "468", "542", "437"];

test("an order as people write it: spaces, commas, arrows; level ones joined", () => {
  const order = { ok: true, value: [["724"], ["468", "542"], ["437"]] };
  for (const text of ["724 468=542 437", "724, 468 = 542, 437", "724>468=542>437 "])
    expect(readOrder(text, codes, true)).toEqual(order);
  expect(readOrder(" ", codes, true)).toEqual({ ok: true, value: null });
});

test("what is wrong with an order is said", () => {
  const why = (text: string, ties = true) => {
    const read = readOrder(text, codes, ties);
    return read.ok ? null : read.why;
  };
  expect(why("724 468 999 437")).toBe("an order requires the numbers 724, 468, 542, 437, got 999");
  expect(why("724 468 724 437")).toBe("an order requires every number once, got 724 twice");
  expect(why("724 468")).toBe("an order requires every number once, got none for 542, 437");
  expect(why("724 468=542 437", false)).toBe("an order requires no two level, got 724 468=542 437");
});

test("one is picked of two or three, two of four", () => {
  const three = codes.slice(0, 3);
  expect(readPicks("468", three)).toEqual({ ok: true, value: ["468"] });
  expect(readPicks("", three)).toEqual({ ok: true, value: [] });
  expect(readPicks("468 542", three)).toEqual({
    ok: false,
    why: "an answer requires 1 of 724, 468, 542, got 468 542",
  });
  expect(readPicks("468, 437", codes)).toEqual({ ok: true, value: ["468", "437"] });
  expect(readPicks("468 468", codes).ok).toBe(false);
});

test("law: every whole order is read back as it was written", () => {
  fc.assert(
    fc.property(
      fc.shuffledSubarray(codes, { minLength: 4 }),
      fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }),
      (order, level) => {
        const text = order
          .map((code, i) => (i === 0 ? code : `${level[i - 1] === true ? "=" : " "}${code}`))
          .join("");
        const read = readOrder(text, codes, true);
        expect(read.ok && read.value?.flat()).toEqual(order);
        expect(read.ok && read.value?.length).toBe(4 - level.filter(Boolean).length);
      },
    ),
  );
});
