const MOST_OCTETS = 75;

/** Words as a value of type TEXT (RFC 5545, 3.3.11). Characters that no text may hold are left out. */
export const escaped = (words: string): string =>
  words
    .replaceAll("\\", "\\\\")
    .replaceAll(";", "\\;")
    .replaceAll(",", "\\,")
    .replaceAll(/\r\n|\r|\n/g, "\\n")
    // oxlint-disable-next-line no-control-regex -- the control characters are what is left out (RFC 5545, 3.1)
    .replaceAll(/[\u0000-\u0008\u000B-\u001F\u007F]/g, "");

/** Octets of one character in UTF-8. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}

/** Lines of at most 75 octets each, with CRLF: longer ones go on after a space, between two characters (RFC 5545, 3.1). */
export function folded(lines: readonly string[]): string {
  return lines
    .map((line) => {
      let [made, octets] = ["", 0];
      for (const character of line) {
        const size = octetsOf(character);
        if (octets + size > MOST_OCTETS) {
          made += "\r\n ";
          octets = 1;
        }
        made += character;
        octets += size;
      }
      return `${made}\r\n`;
    })
    .join("");
}
