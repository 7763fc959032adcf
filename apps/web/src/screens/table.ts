import { type ComponentType, lazy } from "react";
import { matchPath, type Params } from "../router/index.ts";
import { screens as about } from "./about/screens.ts";
import { screens as batches } from "./batches/screens.ts";
import { screens as closest } from "./closest/screens.ts";
import { screens as counts } from "./counts/screens.ts";
import { screens as door } from "./door/screens.ts";
import { screens as evidence } from "./evidence/screens.ts";
import { screens as findings } from "./findings/screens.ts";
import { screens as flights } from "./flights/screens.ts";
import { screens as front } from "./front/screens.ts";
import { screens as household } from "./household/screens.ts";
import { screens as join } from "./join/screens.ts";
import { screens as keptUp } from "./kept-up/screens.ts";
import { screens as passing } from "./passing/screens.ts";
import { screens as next } from "./next/screens.ts";
import { screens as palate } from "./palate/screens.ts";
import { screens as pour } from "./pour/screens.ts";
import { screens as rest } from "./rest/screens.ts";
import { screens as reckon } from "./reckon/screens.ts";
import { screens as recipes } from "./recipes/screens.ts";
import type { Screen, ScreenProps } from "./screen.ts";
import { screens as sharing } from "./sharing/screens.ts";
import { screens as shelfList } from "./shelf-list/screens.ts";
import { screens as sheet } from "./sheet/screens.ts";
import { screens as shelf } from "./shelf/screens.ts";
import { screens as trials } from "./trials/screens.ts";
import { screens as weigh } from "./weigh/screens.ts";

export interface Found {
  readonly screen: Screen;
  readonly params: Params;
  readonly Screen: ComponentType<ScreenProps>;
}

/** Every screen, each in its own chunk. A pattern that comes first wins, so "new" stands before ":id". */
const table = [
  ...front,
  ...reckon,
  ...counts,
  ...keptUp,
  ...shelfList,
  ...shelf,
  ...closest,
  ...passing,
  ...next,
  ...palate,
  ...sharing,
  ...recipes,
  ...trials,
  ...weigh,
  ...rest,
  ...batches,
  ...flights,
  ...sheet,
  ...pour,
  ...evidence,
  ...findings,
  ...household,
  ...about,
  ...join,
  ...door,
].map((screen) => ({ screen, Screen: lazy(screen.load) }));

export function findScreen(path: string): Found | null {
  for (const { screen, Screen } of table) {
    const params = matchPath(screen.path, path);
    if (params !== null) return { screen, params, Screen };
  }
  return null;
}
