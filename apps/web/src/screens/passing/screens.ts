import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/passed-on", place: null, load: () => import("./passed-on.tsx") },
  { path: "/h/:household/take-in", place: "recipes", load: () => import("./take-in.tsx") },
  { path: "/h/:household/recipes/:recipe/filling", place: "recipes", load: () => import("./filling.tsx") },
  { path: "/h/:household/recipes/:recipe/rules", place: "recipes", load: () => import("./rules.tsx") },
  { path: "/h/:household/recipes/:recipe/results", place: "recipes", load: () => import("./results.tsx") },
];
