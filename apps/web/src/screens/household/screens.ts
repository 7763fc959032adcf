import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/household/words", place: null, load: () => import("./words.tsx") },
  { path: "/h/:household/household", place: null, load: () => import("./household.tsx") },
];
