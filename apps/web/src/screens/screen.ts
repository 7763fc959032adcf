import type { ComponentType } from "react";
import type { Params } from "../router/index.ts";

/** The five places, in the order of the work. */
export type Place = "shelf" | "recipes" | "batches" | "flights" | "findings";

export interface ScreenProps {
  readonly params: Params;
}

/** One line of the app's table of screens. */
export interface Screen {
  /** As in "/h/:household/recipes/:recipe". */
  readonly path: string;
  /** Which place of the navigation it belongs to. */
  readonly place: Place | null;
  /** No navigation around it: a taster's sheet, the pourer's page. */
  readonly bare?: boolean;
  /** Open to somebody who joined this flight by a link or a code and may read nothing else of the household. */
  readonly guests?: boolean;
  readonly load: () => Promise<{ readonly default: ComponentType<ScreenProps> }>;
}
