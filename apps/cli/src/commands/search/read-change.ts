import { type Read, readNumber } from "../../flags/index.ts";

/** "smoke.smoke=-2": an attribute, and by how much. */
export const readChange: Read<readonly [attribute: string, by: number]> = (text) => {
  const at = text.lastIndexOf("=");
  const by = readNumber("change", -10, 10)(text.slice(at + 1));
  if (at > 0) return by.ok ? { ok: true, value: [text.slice(0, at).trim(), by.value] } : by;
  const limit = "<attribute>=<by>, such as smoke.smoke=-2";
  const message = `change requires ${limit}, got "${text}"`;
  return { ok: false, issue: { code: "change_unreadable", limit, received: text, message } };
};

/** "46-56": the lowest and the highest. */
export const readSpan =
  (what: string, least: number, most: number): Read<[number, number]> =>
  (text) => {
    const typed = /^\s*([\d.]+)\s*(?:-|–|to)\s*([\d.]+)\s*$/.exec(text);
    const read = readNumber(what, least, most);
    const low = read(typed?.[1] ?? text);
    const high = read(typed?.[2] ?? text);
    if (!low.ok) return low;
    if (!high.ok) return high;
    if (low.value <= high.value) return { ok: true, value: [low.value, high.value] };
    const limit = "the lower number first";
    const message = `${what} requires ${limit}, got "${text}"`;
    return { ok: false, issue: { code: "range_upside_down", limit, received: text, message } };
  };
