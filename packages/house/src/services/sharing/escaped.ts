/** A text inside XML or HTML, or inside an attribute's double quotes. Characters that XML 1.0 (2.2) has no place for are left out. */
export const escaped = (text: string): string =>
  text
    // oxlint-disable-next-line no-control-regex -- these are what is left out
    .replaceAll(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/gu, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
