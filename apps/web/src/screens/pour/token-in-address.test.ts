import { expect, test } from "vitest";
import { tokenInAddress } from "./token-in-address.ts";

test("a token is 64 hexadecimal digits behind the #, nothing else", () => {
  const token = "0123456789abcdef".repeat(4);
  expect(tokenInAddress(`#${token}`)).toBe(token);
  for (const hash of ["", "#", token, `#${token}0`, `#${token.toUpperCase()}`, "#main"]) {
    expect(tokenInAddress(hash)).toBeNull();
  }
});
