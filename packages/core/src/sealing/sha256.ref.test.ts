import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { commitmentTo, hex, requireSha256, utf8 } from "./index.ts";

const sha256 = (bytes: Uint8Array): Uint8Array => new Uint8Array(createHash("sha256").update(bytes).digest());

// FIPS 180-4 examples, https://csrc.nist.gov/projects/cryptographic-standards-and-guidelines/example-values, and the 10⁶ times
// "a" and empty message of the older FIPS 180-2; read in ext/hash/tests/sha256.phpt of php/php-src.
test.each([
  ["", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"],
  ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
  [
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  ],
  ["a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"],
])("S4 the hash the tests seal with gives the published digest (%#)", (message, digest) => {
  expect(hex(sha256(Uint8Array.from(message, (letter) => letter.charCodeAt(0))))).toBe(digest);
});

test("S4 another hash is refused", () => {
  expect(() => requireSha256(sha256)).not.toThrow();
  for (const name of ["sha1", "sha512-256", "md5", "sha3-256"]) {
    const other = (bytes: Uint8Array) => new Uint8Array(createHash(name).update(bytes).digest());
    expect(() => requireSha256(other), name).toThrow(/^sealing requires SHA-256, with ba7816bf/);
    expect(() => commitmentTo(utf8("key"), new Uint8Array(16), other)).toThrow(TypeError);
  }
  const oneBlockOnly = (bytes: Uint8Array) => sha256(bytes.subarray(0, 55));
  expect(() => requireSha256(oneBlockOnly)).toThrow("248d6a61");
});

test("S1, S2 the byte form is text that anybody can build by hand, and the commitment follows from it", () => {
  const nonce = Uint8Array.from({ length: 16 }, (_, i) => i);
  const message = Buffer.concat([
    Buffer.from("28:parts-and-proof/commitment/1,16:", "latin1"),
    nonce,
    Buffer.from(",3:key,", "latin1"),
  ]);
  expect(commitmentTo(utf8("key"), nonce, sha256)).toBe(createHash("sha256").update(message).digest("hex"));
});
