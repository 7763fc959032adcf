import { LABEL_SIZES, type LabelSize, MODULE_MM } from "./label-size.data.ts";

/** Whether a square code, as the house draws it (SVG, a unit a module), can still be read at the size that a label has for it. */
export function codeFits(square: string, size: LabelSize): boolean {
  const modules = Number(/viewBox="0 0 (\d+)/u.exec(square)?.[1] ?? Infinity);
  return LABEL_SIZES[size].codeMm / modules >= MODULE_MM;
}
