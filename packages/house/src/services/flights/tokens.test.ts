import { describe, expect, test } from "vitest";
import { hashToken } from "../ids.ts";
import { HouseRefusal } from "../refuse.ts";
import { needToken, sameHash, tokenFits } from "./tokens.ts";

const token = "0123456789abcdef".repeat(4);

const refused = async (given: string | null, stored: string | null) => {
  try {
    await needToken(given, stored);
    return null;
  } catch (error) {
    return error instanceof HouseRefusal ? { status: error.status, issues: error.issues } : error;
  }
};

describe("F14 tokens", () => {
  test("hashes are SHA-256: the example of FIPS 180-2, appendix B.1", async () => {
    expect(await hashToken("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });

  test("a token fits its own hash only", async () => {
    const stored = await hashToken(token);
    expect(await tokenFits(token, stored)).toBe(true);
    expect(await tokenFits(token.replace("0", "1"), stored)).toBe(false);
    expect(await tokenFits(null, stored)).toBe(false);
    expect(await tokenFits(token, null)).toBe(false);
    expect(await tokenFits(stored, stored), "the hash itself is no token").toBe(false);
  });

  test("hashes are equal in all places or not at all", () => {
    const hash = "ab".repeat(32);
    expect(sameHash(hash, hash)).toBe(true);
    for (let i = 0; i < hash.length; i += 1) {
      expect(sameHash(hash, `${hash.slice(0, i)}f${hash.slice(i + 1)}`)).toBe(false);
    }
    expect(sameHash(hash, hash.slice(1))).toBe(false);
    expect(sameHash(hash, "")).toBe(false);
    expect(sameHash("", hash)).toBe(false);
  });

  test("the refusal is the same whether such a token exists or not, and does not repeat what came", async () => {
    const stored = await hashToken(token);
    const another = "f".repeat(64);
    expect(await refused(another, stored)).toEqual(await refused(another, null));
    expect(await refused(null, stored)).toEqual(await refused(null, null));
    expect(await refused(null, stored)).toMatchObject({ status: 401, issues: [{ code: "token_needed" }] });
    expect(await refused(another, stored)).toMatchObject({ status: 403, issues: [{ code: "token_wrong" }] });
    expect(JSON.stringify(await refused(another, stored))).not.toContain(another);
  });
});
