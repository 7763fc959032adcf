import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/recipes/:recipe/share", place: "recipes", load: () => import("./share.tsx") },
  { path: "/h/:household/recipes/:recipe/card", place: "recipes", load: () => import("./card.tsx") },
];
