import { oakDose, pieceGeometry } from "@partsproof/core/oak";
import { parseSize } from "@partsproof/core/quantity";
import type { Issue, OakPiece } from "@partsproof/house/protocol";

export const SHAPES = ["stick", "stave", "cube", "chips", "spiral", "area"] as const;
export type ShapeName = (typeof SHAPES)[number];

export interface TypedWood {
  readonly shape: ShapeName;
  readonly size: string;
  readonly area: string;
  readonly count: number;
  readonly grams: string;
}

export type WoodRead =
  | { readonly ok: true; readonly wood: Wood }
  | { readonly ok: false; readonly issue: Issue };
export interface Wood {
  readonly piece?: OakPiece;
  readonly areaCm2?: number;
  readonly count?: number;
  readonly grams?: number;
}

const number = (text: string): number => (text.trim() === "" ? Number.NaN : Number(text.replace(",", ".")));

function wrong(path: string, limit: string, received: string): WoodRead {
  const message = `${path === "size" ? "the lengths" : path} requires ${limit}, got "${received}"`;
  return { ok: false, issue: { code: "wood_unreadable", path: [path], limit, received, message } };
}

/** What was typed of a piece of wood, as the house takes it. Lengths in mm or cm, as core reads sizes. */
export function readWood({ shape, size, area, count, grams }: TypedWood): WoodRead {
  const weighed = number(grams);
  if (grams.trim() !== "" && !(weighed > 0)) return wrong("grams", "more than 0 g, or nothing", grams);
  const heavy = grams.trim() === "" ? {} : { grams: weighed };
  if (shape === "area") {
    const areaCm2 = number(area);
    return areaCm2 > 0
      ? { ok: true, wood: { areaCm2, ...heavy } }
      : wrong("areaCm2", "more than 0 cm²", area);
  }
  if (shape === "spiral") {
    const read = parseSize(size, 5);
    if (!read.ok) return wrong("piece", read.issue.limit, size);
    const [outer = 0, core = 0, fin = 0, pitch = 0, length = 0] = read.value;
    return { ok: true, wood: { piece: { shape, outer, core, fin, pitch, length }, count, ...heavy } };
  }
  const one = shape === "cube" ? parseSize(size, 1) : parseSize(size, 3);
  if (!one.ok) return wrong("piece", one.issue.limit, size);
  const [a = 0, b = a, c = a] = one.value;
  if (shape !== "chips") return { ok: true, wood: { piece: { shape, cm: [a, b, c] }, count, ...heavy } };
  if (grams.trim() === "") return wrong("grams", "what the chips weigh, in g", grams);
  return { ok: true, wood: { piece: { shape, cm: [a, b, c], grams: weighed } } };
}

export interface DoseSeen {
  readonly areaPerLitre: number;
  readonly caskRatio: number;
  readonly caskRatioLow: number;
  readonly caskRatioHigh: number;
}

/** What it comes to in a volume, while it is typed; null where it is no body yet. */
export function doseSeen({ piece, areaCm2, count = 1 }: Wood, volumeMl: number): DoseSeen | null {
  try {
    const area = areaCm2 ?? (piece === undefined ? 0 : pieceGeometry(piece, count).areaCm2);
    return area > 0 && volumeMl > 0 ? oakDose({ areaCm2: area, grams: null, litres: volumeMl / 1000 }) : null;
  } catch {
    return null;
  }
}
