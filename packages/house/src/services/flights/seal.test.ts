import { describe, expect, test } from "vitest";
import { seal, unseal } from "./seal.ts";

const random = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) };
const house = { random, sealKey: random.bytes(32) };

/** What a sealed text is, by NIST SP 800-38D alone: 12 bytes of nonce, ciphertext, 16 bytes of tag. */
async function openedByHand(sealed: string, aad: string): Promise<Uint8Array> {
  const bytes = new Uint8Array(Buffer.from(sealed, "base64url"));
  const key = await crypto.subtle.importKey("raw", house.sealKey.slice(), "AES-GCM", false, ["decrypt"]);
  const name = "AES-GCM";
  const additionalData = new TextEncoder().encode(aad);
  const iv = bytes.slice(0, 12);
  return new Uint8Array(await crypto.subtle.decrypt({ name, iv, additionalData }, key, bytes.slice(12)));
}

describe("F2 the seal", () => {
  test.each(["", "a", "Lamplighter's Rest \u{1F30A}", "x".repeat(40_000)])(
    "opens what it sealed (%#)",
    async (text) => {
      expect(await unseal(house, await seal(house, text, "flight"), "flight")).toBe(text);
    },
  );

  test("is AES-256-GCM with the associated data, as another reading of the standard opens it", async () => {
    const plain = await openedByHand(await seal(house, "secret", "flight"), "flight");
    expect(new TextDecoder().decode(plain.slice(4, 10))).toBe("secret");
  });

  test("does not open for another flight, under another key, or with one bit changed", async () => {
    const sealed = await seal(house, "secret", "flight");
    expect(await unseal(house, sealed, "another")).toBeNull();
    expect(await unseal({ sealKey: random.bytes(32) }, sealed, "flight")).toBeNull();
    const bytes = Buffer.from(sealed, "base64url");
    for (const at of [0, 12, 5000, bytes.length - 1]) {
      const touched = Buffer.from(bytes);
      touched.writeUInt8(touched.readUInt8(at) ^ 1, at);
      expect(await unseal(house, touched.toString("base64url"), "flight")).toBeNull();
    }
    for (const rubbish of ["", "AAAA", "not base64!", sealed.slice(0, -8)]) {
      expect(await unseal(house, rubbish, "flight")).toBeNull();
    }
  });

  test("gives the same length for any text that fits its block, and a fresh nonce each time", async () => {
    const lengths = new Set<number>();
    const nonces = new Set<string>();
    for (const size of [0, 1, 15, 16, 1000, 16_380]) {
      const sealed = await seal(house, "é".repeat(size / 2), "flight");
      lengths.add(sealed.length);
      nonces.add(sealed.slice(0, 16));
    }
    expect(lengths.size).toBe(1);
    expect(nonces.size).toBe(6);
  });
});
