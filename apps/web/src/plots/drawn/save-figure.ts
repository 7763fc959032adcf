import { csvOf, standaloneSvg } from "./standalone.ts";
import type { Drawing, Table } from "./drawing.ts";

/** Twice the drawn size, so that a print of it is not coarse. */
const SCALE = 2;

/** Offers a file to whoever is at the browser. */
export function offerFile(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has begun to read it by then.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

export interface Saved {
  readonly name: string;
  readonly title: string;
  readonly note: string;
  readonly drawing: Drawing;
  readonly table: Table;
}

export function saveSvg({ name, title, note, drawing }: Saved): void {
  offerFile(`${name}.svg`, new Blob([standaloneSvg(drawing, title, note)], { type: "image/svg+xml" }));
}

export function saveCsv({ name, table }: Saved): void {
  // The mark that spreadsheets read UTF-8 by.
  offerFile(`${name}.csv`, new Blob(["\ufeff", csvOf(table)], { type: "text/csv;charset=utf-8" }));
}

export async function savePng({ name, title, note, drawing }: Saved): Promise<void> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(standaloneSvg(drawing, title, note))}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = image.naturalWidth * SCALE;
  canvas.height = image.naturalHeight * SCALE;
  canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((made) => canvas.toBlob(made, "image/png"));
  if (blob === null) throw new Error("a picture requires a canvas that can be read, got none");
  offerFile(`${name}.png`, blob);
}
