import { type Rng, rngFromUint32 } from "@partsproof/core/statistics";
import type { House } from "../ports.ts";

/** The house's random bytes as unbiased whole numbers, for what core draws. */
export function chanceOf(house: Pick<House, "random">): Rng {
  return rngFromUint32(() => {
    const bytes = house.random.bytes(4);
    return new DataView(bytes.buffer, bytes.byteOffset, 4).getUint32(0);
  });
}
