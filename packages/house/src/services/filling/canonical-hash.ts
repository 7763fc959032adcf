import { refuse } from "../refuse.ts";
import { canonicalJson } from "./canonical-json.ts";

/** The canonical form of a file (RFC 8785) and SHA-256 of it in UTF-8, in hexadecimal. */
export async function canonicalHash(
  value: unknown,
  what: string,
): Promise<{ readonly canonical: string; readonly sha256: string; readonly bytes: number }> {
  const canonical = canonicalOf(value, what);
  const bytes = new TextEncoder().encode(canonical);
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  const sha256 = [...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return { canonical, sha256, bytes: bytes.length };
}

function canonicalOf(value: unknown, what: string): string {
  try {
    return canonicalJson(value);
  } catch {
    return refuse(422, {
      code: "text_not_unicode",
      path: [],
      limit: "whole Unicode characters",
      received: null,
      message: `a ${what} file requires whole Unicode characters, got half of one`,
    });
  }
}
