import { offerFile } from "../../plots/index.ts";
import type { Shared } from "./use-shared.ts";

/** The card as the browser draws it, 1080 by 1350 points. */
export async function savePicture({ name, text }: Shared): Promise<void> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = image.naturalWidth;
  canvas.height = image.naturalHeight;
  canvas.getContext("2d")?.drawImage(image, 0, 0);
  const blob = await new Promise<Blob | null>((made) => canvas.toBlob(made, "image/png"));
  if (blob === null) throw new Error("a picture requires a canvas that can be read, got none");
  offerFile(name.replace(/\.svg$/u, ".png"), blob);
}
