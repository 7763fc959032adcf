import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readSealKey } from "./seal-key.ts";

describe("the seal key", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "partsproof-seal-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it("is made once, of 32 bytes, readable by its owner only, with nothing left beside it", () => {
    const inner = join(folder, "new", "folder");
    const first = readSealKey({ folder: inner });
    expect(first).toHaveLength(32);
    expect(readSealKey({ folder: inner })).toStrictEqual(first);
    expect(readdirSync(inner)).toStrictEqual(["seal.key"]);
    expect(statSync(join(inner, "seal.key")).mode & 0o777).toBe(0o600);
    expect(statSync(inner).mode & 0o777).toBe(0o700);
    expect(readFileSync(join(inner, "seal.key"), "utf8")).toBe(`${Buffer.from(first).toString("hex")}\n`);
  });

  it("differs from house to house", () => {
    expect(readSealKey({ folder: join(folder, "a") })).not.toStrictEqual(
      readSealKey({ folder: join(folder, "b") }),
    );
  });

  it("is the given one if one is given, and then no file is made", () => {
    const given = "0f".repeat(32);
    expect(readSealKey({ folder, given })).toStrictEqual(new Uint8Array(32).fill(15));
    expect(readdirSync(folder)).toStrictEqual([]);
  });

  it("refuses half a key without showing it", () => {
    const half = "ab".repeat(31);
    expect(() => readSealKey({ folder, given: half })).toThrow(
      "PARTSPROOF_SEAL_KEY requires 64 hex digits, got 62 characters that are not",
    );
    writeFileSync(join(folder, "seal.key"), half);
    let message = "";
    try {
      readSealKey({ folder });
    } catch (error) {
      message = String(error);
    }
    expect(message).toMatch(/seal\.key requires 64 hex digits, got 62/);
    expect(message).not.toContain("abab");
  });

  it("is not replaced in silence when a house has lost its own", () => {
    const databaseFile = join(folder, "house.db");
    writeFileSync(databaseFile, "");
    expect(() => readSealKey({ folder, databaseFile })).toThrow(/seal key requires the file/);
    expect(readdirSync(folder)).toStrictEqual(["house.db"]);
  });
});
