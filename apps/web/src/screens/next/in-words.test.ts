import { expect, test } from "vitest";
import { tooLittleLeft } from "@partsproof/house/protocol";
import { inHundred, partsInWords, withNames, worthInWords } from "./in-words.ts";

const malt = "01m89xtk809xttqfncttaw9yzv";
const rye = "01m89xtk805jfrvpm3w8tereak";
const names = { [malt]: "Skerry Malt", [rye]: "Tide Rye" };

test("recipes, ids and chances in words", () => {
  expect(partsInWords({ [rye]: 1, [malt]: 2 }, names)).toBe("2 parts of Skerry Malt, 1 of Tide Rye");
  expect(partsInWords({ [rye]: 3, [malt]: 0 }, names)).toBe("Tide Rye alone");
  expect(withNames(`To find out whether more ${rye} helps.`, names)).toBe(
    "To find out whether more Tide Rye helps.",
  );
  expect([inHundred(0), inHundred(0.504), inHundred(1)]).toEqual(["1", "50", "99"]);
  expect([worthInWords(-0.72, 0.31), worthInWords(0.01, 2)]).toEqual(["−0.7 ± 0.3", "0.0 ± 2.0"]);
});

test("what is scarce by name", () => {
  expect(tooLittleLeft([names[malt] ?? malt, names[rye] ?? rye])).toBe(
    "Too little is left of Skerry Malt, Tide Rye for some mixes: none of them stands in this flight.",
  );
});
