import type { Screen } from "../screen.ts";

export const screens: readonly Screen[] = [
  { path: "/h/:household/recipes/closest", place: "recipes", load: () => import("./closest.tsx") },
];
