/**
 * A recipe as a link, or what came of one: everything after `#` is the file's canonical JSON in UTF-8, compressed (zlib, RFC 1950, whose checksum tells a
 * damaged link) and written in base64url (RFC 4648, 5), after the number of this form and a full stop. A browser sends no server what
 * stands after `#`, so it does not matter whose address stands before it.
 */
const FORM = "1.";
/** Where the app opens such a link. */
export const RECIPE_LINK_PATH = "/passed-on";
/** Characters of a link, and bytes of the recipe in it: what is longer is passed on as a file. */
export const RECIPE_LINK_LIMITS = { characters: 64_000, bytes: 512 * 1024 } as const;

export type ReadLink =
  | { readonly ok: true; readonly text: string }
  | {
      readonly ok: false;
      readonly code: "link_not_found" | "link_too_long" | "link_damaged";
      readonly limit: string;
    };

/** @param canonical the recipe or the result in its canonical form */
export async function writeRecipeLink(canonical: string, address: string): Promise<string> {
  const bytes = await through(
    new TextEncoder().encode(canonical),
    new CompressionStream("deflate"),
    Infinity,
  );
  return `${new URL(RECIPE_LINK_PATH, address).href}#${FORM}${base64Url(bytes ?? new Uint8Array())}`;
}

/** The JSON text in a link, whatever host it names and whatever was pasted around it: nothing is fetched. */
export async function readRecipeLink(pasted: string): Promise<ReadLink> {
  if (pasted.length > RECIPE_LINK_LIMITS.characters)
    return { ok: false, code: "link_too_long", limit: `at most ${RECIPE_LINK_LIMITS.characters} characters` };
  // Mail breaks long lines: as it stands first, then with its lines joined.
  const found = [pasted, pasted.replaceAll(/\s+/gu, "")].map((text) => /(?:#|^)1\.([\w-]+)/u.exec(text)?.[1]);
  const [whole, joined] = found;
  if (whole === undefined || joined === undefined)
    return { ok: false, code: "link_not_found", limit: "a link with #1. and a recipe or a result after it" };
  const read = await unpacked(whole);
  return read.ok || read.code !== "link_damaged" || joined === whole ? read : unpacked(joined);
}

async function unpacked(data: string): Promise<ReadLink> {
  try {
    const packed = Uint8Array.from(atob(data.replaceAll("-", "+").replaceAll("_", "/")), (c) =>
      c.charCodeAt(0),
    );
    const bytes = await through(packed, new DecompressionStream("deflate"), RECIPE_LINK_LIMITS.bytes);
    if (bytes !== null) return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
    return {
      ok: false,
      code: "link_too_long",
      limit: `a file of at most ${RECIPE_LINK_LIMITS.bytes} bytes`,
    };
  } catch {
    return { ok: false, code: "link_damaged", limit: "a link that is whole, to its last character" };
  }
}

/** Null as soon as more than `most` bytes have come out: a short link can unfold to gigabytes. */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array | null> {
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    length += part.value.byteLength;
    if (length > most) {
      await reader.cancel().catch(() => undefined);
      return null;
    }
    parts.push(part.value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.byteLength;
  }
  return whole;
}

const base64Url = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
