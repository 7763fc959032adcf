import { parseArea, parseSize } from "@partsproof/core/quantity";
import type { OakPiece } from "@partsproof/house/protocol";
import type { Read } from "./flag.ts";
import { unread } from "./read-number.ts";

/** More than 0 cm²: "66cm2", "6600 mm2"; a bare number is cm². */
export const readArea: Read<number> = (text) => {
  const read = parseArea(text);
  if (read.ok && read.value === 0) return unread("area", "value_too_small", "more than 0 cm²", text);
  return read;
};

const SIDES = ["stick", "stave", "cube", "chips"] as const;
/** A piece of oak as it is typed; the grams of chips come by a flag of their own. */
export type PieceTyped =
  | { readonly shape: (typeof SIDES)[number]; readonly cm: readonly [number, number, number] }
  | Extract<OakPiece, { readonly shape: "spiral" }>;

/** "stick=10x10x160mm", "cube=10mm", "spiral=25x10x3x8x100mm" (outer, core, fin, pitch, length). */
export const readPiece: Read<PieceTyped> = (text) => {
  const at = text.indexOf("=");
  const shape = text.slice(0, at).trim().toLowerCase();
  const limit = "stick, stave, cube, chips or spiral, then = and its lengths, such as stick=10x10x160mm";
  if (at < 0) return unread("piece", "piece_unreadable", limit, text);
  const lengths = text.slice(at + 1);
  if (shape === "spiral") {
    const read = parseSize(lengths, 5);
    if (!read.ok) return read;
    const [outer = 0, core = 0, fin = 0, pitch = 0, length = 0] = read.value;
    return { ok: true, value: { shape, outer, core, fin, pitch, length } };
  }
  const sides = SIDES.find((word) => word === shape);
  if (sides === undefined) return unread("piece", "piece_unreadable", limit, text);
  const one = sides === "cube" ? parseSize(lengths, 1) : null;
  const read = one?.ok === true ? one : parseSize(lengths, 3);
  if (!read.ok) return read;
  const [a = 0, b = a, c = a] = read.value;
  return { ok: true, value: { shape: sides, cm: [a, b, c] } };
};
