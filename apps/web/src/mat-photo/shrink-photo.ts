import { fitWithin } from "./fit-within.ts";

/** Enough to read a number on a mat; a few hundred kilobytes. */
const MOST_PX = 1600;
const QUALITY = 0.8;

/** A picture scaled down and drawn anew, which leaves behind where and when it was taken. Null for what is no picture. */
export async function shrinkPhoto(file: Blob): Promise<Blob | null> {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => null);
  if (picture === null) return null;
  const canvas = document.createElement("canvas");
  const { width, height } = fitWithin(picture.width, picture.height, MOST_PX);
  canvas.width = width;
  canvas.height = height;
  canvas.getContext("2d")?.drawImage(picture, 0, 0, width, height);
  picture.close();
  return new Promise((done) => {
    canvas.toBlob(done, "image/jpeg", QUALITY);
  });
}
