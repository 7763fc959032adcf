export interface DecodedText {
  readonly text: string;
  /** As the encoding's standard names it (WHATWG Encoding). */
  readonly encoding: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
}

/**
 * The text of a file as programs for tables write it: by its byte order mark, else UTF-8 where it is that, else Windows-1252, in which
 * every byte is some character. The mark itself is left out.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return as("utf-8");
  if (a === 0xff && b === 0xfe) return as("utf-16le");
  if (a === 0xfe && b === 0xff) return as("utf-16be");
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), encoding: "utf-8" };
  } catch {
    return as("windows-1252");
  }

  function as(encoding: DecodedText["encoding"]): DecodedText {
    return { text: new TextDecoder(encoding).decode(bytes), encoding };
  }
}
