import { expect, test } from "vitest";
import { abv20, millilitres20 } from "../quantity/index.ts";
import type { Abv20 } from "../quantity/index.ts";
import { waterToFill } from "./water-to-fill.ts";
import { waterToStrength } from "./water-to-strength.ts";

const volumeMl = millilitres20(700);
const finalMl = millilitres20(750);

test("A12: a target above the start is a no that names the start", () => {
  const issue = {
    code: "target_above_start",
    limit: 43,
    received: 60,
    message: "target strength requires at most the starting 43 % vol, got 60 % vol",
  };
  expect(waterToStrength({ volumeMl, from: abv20(43), to: abv20(60) })).toEqual({ ok: false, issue });
  expect(waterToFill({ finalMl, from: abv20(43), to: abv20(60) })).toEqual({ ok: false, issue });
});

test("A12: no amount of water takes a whiskey to 0 % vol", () => {
  const ask = { from: abv20(43), to: abv20(0) };
  for (const answer of [waterToStrength({ volumeMl, ...ask }), waterToFill({ finalMl, ...ask })]) {
    expect(answer).toMatchObject({
      ok: false,
      issue: { code: "target_without_alcohol", limit: 0, received: 0 },
    });
  }
});

test("A11, A13: a target equal to the start needs no water", () => {
  for (const strength of [0, 43, 100]) {
    const ask = { from: abv20(strength), to: abv20(strength) };
    expect(waterToStrength({ volumeMl, ...ask })).toEqual({
      ok: true,
      waterMl: 0,
      waterG: 0,
      finalMl: 700,
      naiveWaterMl: 0,
    });
    expect(waterToFill({ finalMl, ...ask })).toMatchObject({
      ok: true,
      liquidMl: 750,
      waterMl: 0,
      finalMl: 750,
    });
  }
});

test("A11: no liquid needs no water", () => {
  const answer = waterToStrength({ volumeMl: millilitres20(0), from: abv20(60), to: abv20(43) });
  expect(answer).toMatchObject({ ok: true, waterMl: 0, finalMl: 0 });
});

test("A16: a strength or volume outside its domain throws before any no", () => {
  expect(() => waterToStrength({ volumeMl, from: 101 as Abv20, to: abv20(43) })).toThrow(RangeError);
  expect(() => waterToStrength({ volumeMl, from: abv20(60), to: -1 as Abv20 })).toThrow(RangeError);
  expect(() => waterToFill({ finalMl, from: abv20(60), to: Number.NaN as Abv20 })).toThrow(RangeError);
});
