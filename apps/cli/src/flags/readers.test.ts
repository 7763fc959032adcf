import { MixDraft, VolumeMl } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { readNumber } from "./read-number.ts";
import {
  readCask,
  readGlassName,
  readGlassScore,
  readGlassStrength,
  readGlassText,
  readGrain,
  readMark,
  readPouredPart,
  readRanking,
  readSetOrder,
  readSetPick,
  readSlot,
  readVesselAmount,
} from "./read-pair.ts";
import { minorUnits } from "./read-price.ts";
import {
  readAmount,
  readLevel,
  readLevelAt,
  readMass,
  readPart,
  readStrengthOn,
  readVolume,
} from "./read-quantity.ts";
import { readAddress } from "./read-text.ts";

test.each([
  ["part", readPart, "2@62.4", { parts: 2, strength: { basis: "abv20", value: 62.4 } }],
  ["part", readPart, "1.5@124.8 proof", { parts: 1.5, strength: { basis: "proof60F", value: 124.8 } }],
  ["volume", readVolume, "70cl", 700],
  ["level", readLevel, "0", 0],
  ["mass", readMass, "94.8", 94.8],
  ["mass", readMass, "0.4 kg", 400],
  ["level at", readLevelAt, "650ml@61", { volumeMl: 650, strength: { basis: "abv20", value: 61 } }],
  ["poured", readPouredPart, "2=440 g", [2, 440]],
  ["amount", readAmount, "ALL", { kind: "all" }],
  ["amount", readAmount, "12 g", { kind: "mass", g: 12 }],
  ["amount", readAmount, "30ml", { kind: "volume", ml: 30 }],
  ["proof", readStrengthOn("proof60F"), "80", 80],
  ["proof", readStrengthOn("proof60F"), "80 proof", 80],
  ["abv", readStrengthOn("abv20"), "40 %", 40],
  ["grain", readGrain, "malted rye=51%", ["malted rye", 51]],
  ["cask", readCask, "american OAK: port: tawny", { species: "American oak", held: "port: tawny" }],
  ["slot", readSlot, "2@Dunnage Row @ cask strength", { parts: 2, of: "Dunnage Row @ cask strength" }],
  ["pour", readVesselAmount, "a=b=30ml", ["a=b", { kind: "volume", ml: 30 }]],
  ["note", readGlassText, "417=salt = sea", ["417", "salt = sea"]],
  ["score", readGlassScore, "3=80.5", ["3", 80.5]],
  [
    "strong",
    readGlassStrength,
    "417=nose:Smoke=6.5",
    ["417", { section: "nose", attribute: "smoke.smoke", strength: 6.5 }],
  ],
  [
    "strong",
    readGlassStrength,
    "3=whole:sweet.sugar=",
    ["3", { section: "whole", attribute: "sweet.sugar", strength: null }],
  ],
  ["guess", readGlassName, "417=", ["417", ""]],
  ["mark", readMark, "3=b", [3, "B"]],
  ["rank", readRanking, "417 > 233 = 508", [["417"], ["233", "508"]]],
  ["rank", readRanking, "417,233=508", [["417"], ["233", "508"]]],
  ["pick", readSetPick, "2=417", [2, ["417"]]],
  ["pick", readSetPick, "1=417, 233", [1, ["417", "233"]]],
  ["pick", readSetPick, "3=", [3, []]],
  ["order", readSetOrder, "2=417 > 233", [2, [["417"], ["233"]]]],
  ["order", readSetOrder, "1= ", [1, null]],
  ["number", readNumber("x", -20, 40), "-4e-1", -0.4],
  ["house", readAddress, "http://127.0.0.1:4480/", "http://127.0.0.1:4480"],
])("%s reads %o %j", (_what, read, text, value) => {
  expect(read(text)).toEqual({ ok: true, value });
});

test.each([
  ["part", readPart, "62.4", "part_unreadable"],
  ["part", readPart, "two@62.4", "number_unreadable"],
  ["part", readPart, "-1@62.4", "value_too_small"],
  ["part", readPart, "2@", "strength_unreadable"],
  ["part", readPart, "2@100.1", "strength_out_of_range"],
  ["part", readPart, "2@-1", "strength_out_of_range"],
  ["volume", readVolume, "0", "value_too_small"],
  ["volume", readVolume, "-1ml", "value_too_small"],
  ["volume", readVolume, "101 l", "value_too_large"],
  ["volume", readVolume, "2000 l", "value_too_large"],
  ["volume", readVolume, "1,000 ml", "volume_unreadable"],
  ["volume", readVolume, "a dram", "volume_unreadable"],
  ["amount", readAmount, "0ml", "value_too_small"],
  ["amount", readAmount, "some", "amount_unreadable"],
  ["abv", readStrengthOn("abv20"), "80 proof", "strength_unreadable"],
  ["proof", readStrengthOn("proof60F"), "40 %", "strength_unreadable"],
  ["proof", readStrengthOn("proof60F"), "201", "strength_out_of_range"],
  ["grain", readGrain, "corn", "grain_unreadable"],
  ["grain", readGrain, "corn=101", "value_too_large"],
  ["cask", readCask, "American oak", "cask_unreadable"],
  ["cask", readCask, "pine:nothing", "unknown_word"],
  ["slot", readSlot, "1.5@x", "not_whole"],
  ["slot", readSlot, "100@x", "value_too_large"],
  ["slot", readSlot, "2@", "slot_unreadable"],
  ["pour", readVesselAmount, "jug", "pour_unreadable"],
  ["note", readGlassText, "0417=salt", "glass_unreadable"],
  ["score", readGlassScore, "417=101", "value_too_large"],
  ["strong", readGlassStrength, "417=smoke", "strength_unreadable"],
  ["strong", readGlassStrength, "417=ear:smoke=6", "unknown_word"],
  ["strong", readGlassStrength, "417=nose:mirrors=6", "unknown_word"],
  ["strong", readGlassStrength, "417=nose:smoke=10.1", "value_too_large"],
  ["strong", readGlassStrength, "417=nose:smoke=-1", "value_too_small"],
  ["mark", readMark, "11=A", "value_too_large"],
  ["mark", readMark, "1=K", "mark_unreadable"],
  ["rank", readRanking, "417 > > 233", "rank_unreadable"],
  ["pick", readSetPick, "9=417", "value_too_large"],
  ["pick", readSetPick, "1=R", "pick_unreadable"],
  ["pick", readSetPick, "417", "pick_unreadable"],
  ["order", readSetOrder, "3=417", "value_too_large"],
  ["order", readSetOrder, "1=417 >", "rank_unreadable"],
  ["number", readNumber("x", 0, 1), "0x1", "number_unreadable"],
  ["number", readNumber("x", 0, 1), "NaN", "number_unreadable"],
  ["number", readNumber("x", 0, 1), "", "number_unreadable"],
  ["house", readAddress, "127.0.0.1:4480", "address_unreadable"],
  ["house", readAddress, "http://127.0.0.1:4480/api", "address_unreadable"],
  ["house", readAddress, "ftp://127.0.0.1/", "address_unreadable"],
])("%s refuses what it cannot take: %o %j", (_what, read, text, code) => {
  const message = expect.stringMatching(/ requires .+, got /);
  expect(read(text)).toMatchObject({ ok: false, issue: { code, message } });
});

test("the limits of parts and volumes are those of the house", () => {
  const draft = (parts: number, volumeMl: number) =>
    MixDraft.safeParse({ parts: [{ parts, strength: { basis: "abv20", value: 40 } }], volumeMl }).success;
  for (const parts of [0, 10_000, 10_000.1, -0.1]) {
    expect(readPart(`${parts}@40`).ok).toBe(draft(parts, 100));
  }
  for (const ml of [0.001, 100_000, 100_000.1]) {
    expect(readVolume(`${ml} ml`).ok).toBe(VolumeMl.safeParse(ml).success);
  }
});

test.each([
  ["45", "USD", 4500],
  ["45.5", "EUR", 4550],
  ["45,50", "EUR", 4550],
  ["0.07", "GBP", 7],
  ["4500", "JPY", 4500],
  ["1.234", "KWD", 1234],
])("%s %s is %d minor units", (text, currency, minor) => {
  expect(minorUnits(text, currency)).toBe(minor);
});

test.each([
  ["45.505", "USD"],
  ["45.5", "JPY"],
  ["1,000.00", "USD"],
  ["-1", "USD"],
  ["free", "USD"],
])("%s %s is refused and not rounded", (text, currency) => {
  expect(minorUnits(text, currency)).toMatchObject({
    code: "price_unreadable",
    path: ["price"],
    received: text,
  });
});
