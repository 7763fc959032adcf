import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/trials", place: "recipes", load: () => import("./trial-sets.tsx") },
  { path: "/h/:household/trials/new", place: "recipes", load: () => import("./new-trials.tsx") },
  { path: "/h/:household/trials/:trials", place: "recipes", load: () => import("./trial-set.tsx") },
];
