import type { Grams } from "./grams.ts";
import type { Millilitres20 } from "./millilitres-20.ts";

/** An amount of liquid as somebody measured it: by volume or by mass. */
export type Amount =
  | { readonly kind: "volume"; readonly volumeMl: Millilitres20 }
  | { readonly kind: "mass"; readonly massG: Grams };
