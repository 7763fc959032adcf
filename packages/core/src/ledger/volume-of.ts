import { density } from "../alcoholometry/index.ts";
import { celsius, massFraction } from "../quantity/index.ts";
import { type Contents, massesOf } from "./contents.ts";

/**
 * Volume in mL at 20 °C of well-mixed contents, contraction counted: total mass over the density of the
 * mixture (OIML R 22), never the sum of the parts' volumes. 0 when empty.
 */
export function volumeOf(contents: Contents): number {
  const { ethanolG, waterG } = massesOf(contents);
  const massG = ethanolG + waterG;
  if (!(massG > 0)) return 0;
  return (massG / density(massFraction(ethanolG / massG), celsius(20))) * 1000;
}
