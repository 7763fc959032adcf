import { describe, expect, test } from "vitest";
import {
  fromNow,
  moneyAsTyped,
  printAge,
  printCask,
  printMl,
  printMoney,
  printShare,
  readMoney,
} from "./index.ts";

describe("money", () => {
  test("whole minor units become the amount of their currency, which may have no decimals", () => {
    expect(printMoney(4550, "USD")).toBe("$45.50");
    expect(printMoney(4550, "JPY")).toBe("¥4,550");
    expect(moneyAsTyped(4550, "USD")).toBe("45.50");
    expect(moneyAsTyped(null, "USD")).toBe("");
  });

  test("an amount is read to whole minor units, with a comma too, and nothing is rounded away", () => {
    const read = (text: string, currency = "USD") => {
      const got = readMoney(text, currency, ["priceMinor"]);
      return got.ok ? got.minor : got.issue.message;
    };
    expect([read("45"), read("45.5"), read("45,50"), read(" 0.07 "), read("")]).toEqual([
      4500,
      4550,
      4550,
      7,
      null,
    ]);
    expect(read("4550", "JPY")).toBe(4550);
    expect(read("45.555")).toBe('price requires an amount such as 45.50 USD, got "45.555"');
    expect(read("45.5", "JPY")).toBe('price requires an amount such as 45 JPY, got "45.5"');
    expect(read("-3")).toContain("price requires");
    expect(read("1,000.50")).toContain("price requires");
  });

  test("amounts of cents up to 100 dollars comes back as it was typed", () => {
    for (let minor = 0; minor <= 10_000; minor += 7) {
      expect(readMoney(moneyAsTyped(minor, "USD"), "USD", [])).toEqual({ ok: true, minor });
    }
  });
});

test("volumes carry tenths only below 10 mL, and no zero is signed", () => {
  expect([9.94, 9.96, 0, -0.01, 283.4].map(printMl)).toEqual(
    ["9.9", "10", "0", "0", "283"].map((digits) => `${digits}\u00a0mL`),
  );
});

test("days are counted by the calendar: a minute past midnight is tomorrow", () => {
  const late = new Date(2026, 10, 25, 23, 59).getTime();
  const soon = new Date(2026, 10, 26, 0, 1).toISOString();
  expect(fromNow(soon, late)).toBe("tomorrow");
  expect(fromNow(new Date(2026, 10, 22, 23).toISOString(), late)).toBe("3 days ago");
  expect(fromNow(new Date(2026, 11, 21, 1).toISOString(), late)).toBe("in 26 days");
});

test("ages, casks and shares in words", () => {
  expect([null, 1, 0.5, 4.5, 12].map(printAge)).toEqual([
    "no age stated",
    "1 year",
    "½ year",
    "4½ years",
    "12 years",
  ]);
  expect(printCask({ species: "American oak", held: "nothing" })).toBe("virgin American oak");
  expect(printCask({ species: "not known", held: "port" })).toBe("wood not known, held port");
  expect([0, 0.004, 0.345, 1].map(printShare)).toEqual([
    "0\u00a0%",
    "under 1\u00a0%",
    "35\u00a0%",
    "100\u00a0%",
  ]);
});
