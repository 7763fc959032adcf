import { describe, expect, it } from "vitest";
import { COST, createPassphrases } from "./passphrases.ts";

describe("D5 the owner's passphrase", () => {
  // RFC 7914, section 12: scrypt(P="pleaseletmein", S="SodiumChloride", N=16384, r=8, p=1), first 32 of 64 bytes.
  const RFC_7914 = "7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2";

  it("is scrypt as in RFC 7914", async () => {
    const salt = Buffer.from("SodiumChloride").toString("base64url");
    const stored = ["scrypt", 16_384, 8, 1, salt, Buffer.from(RFC_7914, "hex").toString("base64url")].join(
      ":",
    );
    const { fits } = createPassphrases();
    expect(await fits("pleaseletmein", stored)).toBe(true);
    expect(await fits("pleaseletmeout", stored)).toBe(false);
  });

  it("costs what OWASP asks of scrypt: N=2^17, r=8, p=1, a salt of its own each time", async () => {
    expect(COST).toStrictEqual({ N: 131_072, r: 8, p: 1 });
    const { hash, fits } = createPassphrases();
    const [one, two] = [await hash("four dry casks by the sea"), await hash("four dry casks by the sea")];
    expect(one).toMatch(/^scrypt:131072:8:1:[\w-]{22}:[\w-]{43}$/);
    expect(one).not.toBe(two);
    expect(await fits("four dry casks by the sea", two)).toBe(true);
    expect(await fits("four dry casks by the see", two)).toBe(false);
  });

  it("takes as long where none is stored, or something that is none", async () => {
    const { hash, fits } = createPassphrases();
    const stored = await hash("four dry casks by the sea");
    const took = async (what: string | null): Promise<number> => {
      const times: number[] = [];
      for (let i = 0; i < 2; i += 1) {
        const before = performance.now();
        expect(await fits("something else altogether", what)).toBe(false);
        times.push(performance.now() - before);
      }
      return Math.min(...times);
    };
    const [wrong, none, broken] = [await took(stored), await took(null), await took("plain:text")];
    // A comparison without the hash would take microseconds: a thousandth, not a third.
    for (const other of [none, broken]) expect(other).toBeGreaterThan(wrong / 3);
    for (const other of [none, broken]) expect(other).toBeLessThan(wrong * 3);
  });
});
