import { expect, test } from "vitest";
import { revealedEvening } from "../findings/fixtures/revealed-evening.ts";
import { EVERYONE, openedGlasses } from "./opened-glasses.ts";

test("one taster's glasses open in the order they stand; everybody's in that of the flight", {
  timeout: 60_000,
}, async () => {
  const { finding, close } = await revealedEvening();
  await close();
  const sheet = finding.sheets[0];
  const mine = openedGlasses(finding, sheet?.sheetId ?? "");
  expect(mine.map(({ code }) => code)).toEqual(sheet?.glasses.map(({ code }) => code));
  expect(mine.map(({ guesses }) => guesses.map(({ right }) => right))).toEqual(
    sheet?.glasses.map(({ right }) => [right]),
  );
  const all = openedGlasses(finding, EVERYONE);
  expect(all.map(({ label }) => label)).toEqual(finding.glasses.map(({ label }) => label));
  for (const { guesses } of all) expect(guesses.map(({ taster }) => taster)).toEqual(["Ana", "Ben", "Cai"]);
  // Each taster's guess of a liquid is found by the liquid, not by its place on the mat.
  for (const [i, { guesses }] of all.entries()) {
    for (const { taster, right } of guesses) {
      const own = finding.sheets.find((one) => one.taster === taster);
      expect(own?.glasses.find(({ glass }) => glass === i)?.right).toBe(right);
    }
  }
  // The same evening as two rounds: each taster is told once of a liquid, with both places.
  const rounds = {
    ...finding,
    flight: { ...finding.flight, question: "agree_with_myself" as const },
    sheets: finding.sheets.map((one) => ({
      ...one,
      glasses: one.glasses.flatMap((glass) => [
        { ...glass, set: 1, rank: 1 },
        { ...glass, set: 2, rank: 3 },
      ]),
    })),
  };
  const [first] = openedGlasses(rounds, EVERYONE);
  expect(first?.guesses.map(({ taster, said }) => `${taster}: ${said}`)).toEqual([
    "Ana: put at place 1, then at place 3",
    "Ben: put at place 1, then at place 3",
    "Cai: put at place 1, then at place 3",
  ]);
});
