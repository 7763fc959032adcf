import { type Read, readNumber } from "../../flags/index.ts";

/** "sweet.honey=6": an attribute, and how strong it shall be. */
export const readAimedAttribute: Read<readonly [attribute: string, value: number]> = (text) => {
  const at = text.lastIndexOf("=");
  const value = readNumber("aim", 0, 10)(text.slice(at + 1));
  if (at > 0) return value.ok ? { ok: true, value: [text.slice(0, at).trim(), value.value] } : value;
  const limit = "<attribute>=<0 to 10>, such as sweet.honey=6";
  const message = `aim requires ${limit}, got "${text}"`;
  return { ok: false, issue: { code: "aim_unreadable", limit, received: text, message } };
};
